/** Texts in their order, each once: what happened thirty times is read aloud as “… × 30”. */
export function counted(texts: readonly string[]): string[] {
  const times = new Map<string, number>();
  for (const text of texts) times.set(text, (times.get(text) ?? 0) + 1);
  return [...times].map(([text, count]) => (count === 1 ? text : `${text} × ${count}`));
}

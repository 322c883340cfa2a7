/** Typed text that is not read yet: units other than a field's own are fetched when first met. */
const reading = new Set<Promise<void>>();

export function beingRead(work: Promise<void>): void {
  reading.add(work);
  void work.finally(() => reading.delete(work));
}

/** Ends once every field has taken, or refused, what was typed into it. */
export const allRead = async (): Promise<void> => {
  await Promise.allSettled(reading);
};

/** So many tests that are due, on the icon of the installed app; where a platform has none, nowhere. */
export function badge(count: number): void {
  const shown = count > 0 ? navigator.setAppBadge?.(count) : navigator.clearAppBadge?.();
  // A platform may refuse it at any time; the page says it anyway.
  shown?.catch(() => {});
}

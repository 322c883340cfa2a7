/** Another page of this one, from its top. */
export function goTo(page: string): void {
  location.hash = page;
  scrollTo({ top: 0 });
}

/** A window that nobody sees is not painted: it is not waited for longer. */
const UNSEEN_MS = 300;

/** The first picture of the page stands: what it does not need is fetched and built from here on. */
export const painted = new Promise<void>((stands) => {
  requestAnimationFrame(() => setTimeout(stands));
  setTimeout(stands, UNSEEN_MS);
});

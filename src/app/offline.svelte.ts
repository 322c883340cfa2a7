/** Keeps the page for use without a network, and offers a newer one without forcing it. */
class Offline {
  /** A newer Paper Reef waits. */
  newer = $state(false);
  /** Another window has gone over to it already. */
  takenOver = $state(false);
  /** A piece of the page could not be fetched, from nowhere. */
  lacks = $state(false);
  private readonly unfetched = new WeakSet();
  private waiting: ServiceWorker | null = null;
  private asked = false;

  /** To be called once, by the built page. */
  async keep(): Promise<void> {
    const workers = navigator.serviceWorker;
    if (!workers) return;
    // The first one to take over is the one that this page came with.
    let controlled = workers.controller !== null;
    workers.addEventListener('controllerchange', () => {
      if (this.asked) location.reload();
      else if (controlled) this.takenOver = true;
      controlled = true;
    });
    try {
      const registration = await workers.register('./serviceWorker.js');
      this.offer(registration.waiting);
      const follow = () =>
        registration.installing?.addEventListener('statechange', () =>
          this.offer(registration.waiting),
        );
      // One may have been found before anybody listened.
      follow();
      registration.addEventListener('updatefound', follow);
    } catch {
      // Refused by the browser: the page works, only not without a network.
    }
  }

  takeNewer(): void {
    this.asked = true;
    // Another window may have called it in already: then nothing waits any more.
    if (this.takenOver || this.waiting?.state !== 'installed') location.reload();
    else this.waiting.postMessage('take over');
  }

  /** To be told of whatever could not be fetched; says of an error whether it is one of those. */
  miss(error: Error): void {
    this.unfetched.add(error);
    this.lacks = true;
  }
  hasTold(error: unknown): boolean {
    return typeof error === 'object' && error !== null && this.unfetched.has(error);
  }

  private offer(waiting: ServiceWorker | null): void {
    if (!waiting || !navigator.serviceWorker.controller) return;
    this.waiting = waiting;
    this.newer = true;
  }
}

export const offline = new Offline();

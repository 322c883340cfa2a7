/** Where the reader is: the address's fragment, "page" or "page/detail". */
export class Route {
  private fragment = $state(location.hash.slice(1));

  constructor() {
    addEventListener('hashchange', () => (this.fragment = location.hash.slice(1)));
  }

  get page(): string {
    return this.fragment.split('/')[0]!;
  }

  get detail(): string {
    return this.fragment.split('/').slice(1).join('/');
  }
}

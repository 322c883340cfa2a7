import { preferences } from '../store/preferences.svelte';

/** Light or dark: the system's, or the reader's own choice. */
class Theme {
  private systemDark = $state(matchMedia('(prefers-color-scheme: dark)').matches);

  constructor() {
    matchMedia('(prefers-color-scheme: dark)').addEventListener(
      'change',
      (event) => (this.systemDark = event.matches),
    );
  }

  /** What is on the screen; whoever paints with a colour asks here, to paint again. */
  get shown(): 'light' | 'dark' {
    const { theme } = preferences.now;
    return theme === 'auto' ? (this.systemDark ? 'dark' : 'light') : theme;
  }
}

export const theme = new Theme();

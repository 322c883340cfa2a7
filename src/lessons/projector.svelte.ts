/** Large type and nothing around it, for a class that looks at a wall; left by Escape too. */
export class Projector {
  on = $state(false);

  constructor() {
    $effect(() => {
      document.documentElement.toggleAttribute('data-projector', this.on);
      return () => document.documentElement.removeAttribute('data-projector');
    });
  }

  turn = () => (this.on = !this.on);
  leave = (event: KeyboardEvent) => {
    if (event.key === 'Escape') this.on = false;
  };
}

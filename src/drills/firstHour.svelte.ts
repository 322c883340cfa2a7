import { usualHandAir, type HandAir } from '../../shared/faults/handAir';
import type { Scenario } from '../../shared/scenario/schema';
import type { FirstHourBought } from '../../shared/verdict/bought';
import type { Asking } from '../ask/asking';

/** What each act of a first hour buys, asked after the drill itself. */
export class FirstHourWorth {
  handAir: HandAir = $state.raw(usualHandAir);
  private answered:
    | { readonly of: string; readonly handAir: HandAir; readonly bought: FirstHourBought }
    | undefined = $state.raw();

  constructor(private readonly client: Asking) {}

  /** The answer, if it belongs to this drill. */
  of(scenario: Scenario): FirstHourBought | undefined {
    const { answered, handAir } = this;
    const isOwn = answered?.of === JSON.stringify(scenario) && answered.handAir === handAir;
    return isOwn ? answered.bought : undefined;
  }

  choose(changes: Partial<HandAir>): void {
    this.handAir = { ...this.handAir, ...changes };
  }

  async ask(scenario: Scenario): Promise<void> {
    const { handAir } = this;
    const answer = await this.client.ask('actsBuy', { scenario, handAir });
    if (answer.kind !== 'done') return;
    this.answered = { of: JSON.stringify(scenario), handAir, bought: answer.value };
  }
}

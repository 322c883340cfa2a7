import { usualHandAir } from '../../shared/faults/handAir';
import type { Scenario } from '../../shared/scenario/schema';
import type { OnTheWall } from '../../shared/verdict/bought';
import type { Asking } from '../ask/asking';

/** Every failure that one tank can have, for the sheet on its wall. */
export class Wall {
  sheet: readonly OnTheWall[] | undefined = $state.raw();
  trouble = $state('');
  readonly handAir = usualHandAir;

  constructor(private readonly client: Asking) {}

  async ask(scenario: Scenario): Promise<void> {
    const answer = await this.client.ask('wall', { scenario, handAir: this.handAir });
    if (answer.kind === 'done') this.sheet = answer.value;
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
  }
}

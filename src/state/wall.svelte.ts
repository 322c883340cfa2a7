import { usualHandAir } from '../../shared/faults/handAir';
import type { Scenario } from '../../shared/scenario/schema';
import type { OnTheWall } from '../../shared/verdict/bought';
import { DrillClient } from '../client/drillClient';

/** Its workers stay for the next sheet. */
const client = new DrillClient();

/** Every failure that one tank can have, for the sheet on its wall. */
export class Wall {
  sheet: readonly OnTheWall[] | undefined = $state.raw();
  trouble = $state('');
  readonly handAir = usualHandAir;

  async ask(plan: Scenario): Promise<void> {
    const answer = await client.ask('wall', (desk, job) =>
      desk.wall('wall', job, plan, this.handAir),
    );
    if (answer.kind === 'done') this.sheet = answer.value;
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
  }
}

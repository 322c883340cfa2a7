import type { HandAir } from '../../shared/faults/handAir';
import type { Scenario } from '../../shared/scenario/schema';
import type { Protections } from '../../shared/verdict/bought';
import type { Asking } from '../ask/asking';

/** What would keep a failure from doing harm, each protection on its own. */
export class WhatKeeps {
  answer: Protections | undefined = $state.raw();
  /** The drill that the answer belongs to. */
  scenario: Scenario | undefined = $state.raw();
  busy = $state(false);
  trouble = $state('');

  constructor(private readonly client: Asking) {}

  async ask(scenario: Scenario, handAir: HandAir): Promise<void> {
    this.busy = true;
    this.trouble = '';
    const answer = await this.client.ask('protections', { scenario, handAir });
    if (answer.kind === 'superseded') return;
    this.busy = false;
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
    if (answer.kind === 'done') {
      this.answer = answer.value;
      this.scenario = scenario;
    }
  }
}

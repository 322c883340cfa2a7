import type { Scenario } from '../../shared/scenario/schema';
import type { Asking } from '../ask/asking';
import type { ResponseChoices, ResponseResult } from '../ask/outcome';

/** What to do once it is noticed: every response against the same failure. */
export class WhatThen {
  choices: ResponseChoices = $state.raw({
    ...{ kLaPerH: 4, co2Ppm: 5000, co2Hours: 5, changePercent: 20 },
  });
  results: readonly ResponseResult[] = $state.raw([]);
  scenario: Scenario | undefined = $state.raw();
  busy = $state(false);
  trouble = $state('');

  constructor(private readonly client: Asking) {}

  choose(changes: Partial<ResponseChoices>): void {
    this.choices = { ...this.choices, ...changes };
  }

  async ask(scenario: Scenario): Promise<void> {
    this.busy = true;
    this.trouble = '';
    const { choices } = this;
    const answer = await this.client.ask('responses', { scenario, choices });
    if (answer.kind === 'superseded') return;
    this.busy = false;
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
    if (answer.kind === 'done') {
      this.results = answer.value;
      this.scenario = scenario;
    }
  }
}

import type { Scenario } from '../../shared/scenario/schema';
import type { DrillClient } from '../client/drillClient';
import type { ResponseChoices, ResponseResult } from '../client/outcome';

/** What to do once it is noticed: every response against the same failure. */
export class WhatThen {
  choices: ResponseChoices = $state.raw({
    ...{ kLaPerH: 4, co2Ppm: 5000, co2Hours: 5, changePercent: 20 },
  });
  results: readonly ResponseResult[] = $state.raw([]);
  scenario: Scenario | undefined = $state.raw();
  busy = $state(false);
  trouble = $state('');

  constructor(private readonly client: DrillClient) {}

  choose(changes: Partial<ResponseChoices>): void {
    this.choices = { ...this.choices, ...changes };
  }

  async ask(scenario: Scenario): Promise<void> {
    this.busy = true;
    this.trouble = '';
    const { choices } = this;
    const answer = await this.client.ask('responses', (desk, job) =>
      desk.responses('responses', job, scenario, choices),
    );
    if (answer.kind === 'superseded') return;
    this.busy = false;
    if (answer.kind === 'failed') this.trouble = answer.failure.message;
    else {
      this.results = answer.value;
      this.scenario = scenario;
    }
  }
}

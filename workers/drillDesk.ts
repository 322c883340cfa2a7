import * as Comlink from 'comlink';
import type { HandAir } from '../shared/faults/handAir';
import type { Scenario } from '../shared/scenario/schema';
import type { FirstHourBought, OnTheWall, Protections } from '../shared/verdict/bought';
import type { DrillAnswer } from '../shared/verdict/drillOutcome';
import type { Spreads } from '../shared/verdict/spreads';
import { answering, type Answer } from './answer';
import { sampledOptions } from './engine/sampledOptions';
import type { SimulationOptions } from './engine/simulation';
import { letMessagesIn } from './letMessagesIn';
import { actsBuy } from './studies/drill/actsBuy';
import { largestKept, type Design, type DesignQuestion } from './studies/drill/design';
import { worstHour } from './studies/drill/dump';
import { mapRow, type MapQuestion } from './studies/drill/dumpMap';
import { summaryOf, type EnsembleSummary } from './studies/drill/ensembleSummary';
import { layersOf, type Layer } from './studies/drill/layers';
import {
  memberOptions,
  replayed,
  runMember,
  type MemberResult,
} from './studies/drill/memberResult';
import { undisturbed } from './studies/drill/passing';
import { protectionsOf } from './studies/drill/protections';
import { rehearse } from './studies/drill/rehearse';
import type { ResponseChoices } from './studies/drill/responsePlans';
import { DAYS as WALL_DAYS, wallSheet } from './studies/drill/wallSheet';
import { tryResponses, type ResponseResult } from './studies/drill/responses';

/** A run of members of one ensemble, from one number to before another. */
export interface Members {
  readonly scenario: Scenario;
  readonly spreads: Spreads;
  readonly seed: number;
  readonly from: number;
  readonly to: number;
}

/** Everything that is asked of a drill. A newer job on the same key, or a cancel, ends the older. */
export class DrillDesk {
  private readonly latest = new Map<string, number>();

  drill(key: string, job: number, scenario: Scenario): Promise<Answer<DrillAnswer>> {
    return this.asked(key, job, scenario, (options, goesOn) => rehearse(scenario, options, goesOn));
  }

  actsBuy(
    key: string,
    job: number,
    scenario: Scenario,
    handAir: HandAir,
  ): Promise<Answer<FirstHourBought>> {
    return this.asked(key, job, scenario, (options, goesOn) =>
      actsBuy(scenario, handAir, options, goesOn),
    );
  }

  protections(
    key: string,
    job: number,
    scenario: Scenario,
    handAir: HandAir,
  ): Promise<Answer<Protections>> {
    return this.asked(key, job, scenario, (options, goesOn) =>
      protectionsOf(scenario, handAir, options, goesOn),
    );
  }

  wall(key: string, job: number, plan: Scenario, handAir: HandAir): Promise<Answer<OnTheWall[]>> {
    const scenario = undisturbed(plan);
    const followed = { ...scenario, days: WALL_DAYS };
    return this.asked(key, job, followed, (options, goesOn) =>
      wallSheet(scenario, handAir, options, goesOn),
    );
  }

  async members(key: string, job: number, question: Members): Promise<Answer<MemberResult[]>> {
    const goesOn = this.begin(key, job);
    const answer = await answering(async () => {
      const { scenario, spreads, seed, from, to } = question;
      const options = memberOptions(scenario, await sampledOptions(scenario));
      const results: MemberResult[] = [];
      for (let index = from; index < to; index++) {
        results.push(runMember(scenario, spreads, seed, index, options));
        if (!(await goesOn())) return undefined;
      }
      return results;
    });
    if (answer.kind !== 'done') return answer;
    const buffers = answer.value.flatMap(({ ph, dkh }) => [ph.buffer, dkh.buffer]);
    return Comlink.transfer(answer, buffers as ArrayBuffer[]);
  }

  /** The tank that a member is, as a plan to be looked at on its own. */
  member({ scenario, spreads, seed }: Members, index: number): Scenario {
    return replayed(scenario, spreads, seed, index);
  }

  summary(members: readonly MemberResult[]): Promise<Answer<EnsembleSummary>> {
    return answering(async () => summaryOf(members));
  }

  worstHour(scenario: Scenario, lines: readonly string[]): Promise<Answer<number>> {
    return answering(async () => worstHour(scenario, lines));
  }

  design(
    key: string,
    job: number,
    question: DesignQuestion,
    report: (share: number) => void,
  ): Promise<Answer<Design>> {
    const goesOn = this.begin(key, job);
    return answering(() =>
      largestKept(question, async (share) => {
        report(share);
        return goesOn();
      }),
    );
  }

  mapRow(key: string, job: number, question: MapQuestion, row: number): Promise<Answer<number[]>> {
    const goesOn = this.begin(key, job);
    return answering(async () => {
      const found = mapRow(question, row);
      return (await goesOn()) ? found : undefined;
    });
  }

  layers(scenario: Scenario, hour: number): Promise<Answer<readonly Layer[]>> {
    return answering(async () => layersOf(scenario, hour));
  }

  responses(
    key: string,
    job: number,
    scenario: Scenario,
    choices: ResponseChoices,
  ): Promise<Answer<ResponseResult[]>> {
    return this.asked(key, job, scenario, (options, goesOn) =>
      tryResponses(scenario, choices, options, goesOn),
    );
  }

  cancel(key: string): void {
    this.latest.delete(key);
  }

  /** A job that runs a scenario, with what its expressions of time come to. */
  private asked<T>(
    key: string,
    job: number,
    scenario: Scenario,
    work: (options: SimulationOptions, goesOn: () => Promise<boolean>) => Promise<T | undefined>,
  ): Promise<Answer<T>> {
    const goesOn = this.begin(key, job);
    return answering(async () => work(await sampledOptions(scenario), goesOn));
  }

  /** Takes a job; what comes back lets messages in and says whether the job still stands. */
  private begin(key: string, job: number): () => Promise<boolean> {
    this.latest.set(key, job);
    return async () => {
      await letMessagesIn();
      return this.latest.get(key) === job;
    };
  }
}

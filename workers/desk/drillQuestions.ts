import type { HandAir } from '../../shared/faults/handAir';
import type { Scenario } from '../../shared/scenario/schema';
import type { FirstHourBought, OnTheWall, Protections } from '../../shared/verdict/bought';
import type { DrillAnswer } from '../../shared/verdict/drillOutcome';
import type { Spreads } from '../../shared/verdict/spreads';
import { sampledOptions } from '../engine/sampledOptions';
import { actsBuy as actsBuyIn } from '../studies/drill/actsBuy';
import { largestKept, type Design, type DesignQuestion } from '../studies/drill/design';
import { worstHour as worstHourOf } from '../studies/drill/dump';
import { mapRow as rowOf, type MapQuestion } from '../studies/drill/dumpMap';
import { summaryOf, type EnsembleSummary } from '../studies/drill/ensembleSummary';
import { layersOf, type Layer } from '../studies/drill/layers';
import {
  memberOptions,
  replayed,
  runMember,
  type MemberResult,
} from '../studies/drill/memberResult';
import { undisturbed } from '../studies/drill/passing';
import { protectionsOf } from '../studies/drill/protections';
import { rehearse } from '../studies/drill/rehearse';
import type { ResponseChoices } from '../studies/drill/responsePlans';
import { tryResponses, type ResponseResult } from '../studies/drill/responses';
import { DAYS as WALL_DAYS, wallSheet } from '../studies/drill/wallSheet';
import { handOver } from './handOver';
import type { Job } from './question';

/** An ensemble: every member follows from its seed and number. */
export interface Ensemble {
  readonly scenario: Scenario;
  readonly spreads: Spreads;
  readonly seed: number;
}

/** A run of members of one ensemble, from one number to before another. */
export interface Members extends Ensemble {
  readonly from: number;
  readonly to: number;
}

/** A failure, and what stands ready against it. */
export interface WithHandAir {
  readonly scenario: Scenario;
  readonly handAir: HandAir;
}

export const drill = async (
  scenario: Scenario,
  { goesOn }: Job,
): Promise<DrillAnswer | undefined> => rehearse(scenario, await sampledOptions(scenario), goesOn);

export const actsBuy = async (
  { scenario, handAir }: WithHandAir,
  { goesOn }: Job,
): Promise<FirstHourBought | undefined> =>
  actsBuyIn(scenario, handAir, await sampledOptions(scenario), goesOn);

export const protections = async (
  { scenario, handAir }: WithHandAir,
  { goesOn }: Job,
): Promise<Protections | undefined> =>
  protectionsOf(scenario, handAir, await sampledOptions(scenario), goesOn);

/** Every failure that the tank can have. */
export async function wall(
  { scenario, handAir }: WithHandAir,
  { goesOn }: Job,
): Promise<OnTheWall[] | undefined> {
  const plan = undisturbed(scenario);
  const options = await sampledOptions({ ...plan, days: WALL_DAYS });
  return wallSheet(plan, handAir, options, goesOn);
}

export async function members(
  { scenario, spreads, seed, from, to }: Members,
  { goesOn }: Job,
): Promise<MemberResult[] | undefined> {
  const options = memberOptions(scenario, await sampledOptions(scenario));
  const results: MemberResult[] = [];
  for (let index = from; index < to; index++) {
    results.push(runMember(scenario, spreads, seed, index, options));
    if (!(await goesOn())) return undefined;
  }
  const buffers = results.flatMap(({ ph, dkh }) => [ph.buffer, dkh.buffer]);
  return handOver(results, buffers as ArrayBuffer[]);
}

/** The tank that a member is, as a plan to be looked at on its own. */
export const member = ({
  scenario,
  spreads,
  seed,
  index,
}: Ensemble & { index: number }): Scenario => replayed(scenario, spreads, seed, index);

export const summary = (results: readonly MemberResult[]): EnsembleSummary => summaryOf(results);

export interface WorstHourAsked {
  readonly scenario: Scenario;
  readonly lines: readonly string[];
}
export const worstHour = ({ scenario, lines }: WorstHourAsked): number =>
  worstHourOf(scenario, lines);

/** The search backwards; tells the share of it that is done. */
export const design = (
  question: DesignQuestion,
  { goesOn, tell }: Job<number>,
): Promise<Design | undefined> =>
  largestKept(question, (share) => {
    tell(share);
    return goesOn();
  });

export interface MapRowAsked {
  readonly question: MapQuestion;
  readonly row: number;
}
export const mapRow = (
  { question, row }: MapRowAsked,
  { goesOn }: Job,
): Promise<number[] | undefined> => rowOf(question, row, goesOn);

export const layers = ({
  scenario,
  hour,
}: {
  scenario: Scenario;
  hour: number;
}): readonly Layer[] => layersOf(scenario, hour);

export interface ResponsesAsked {
  readonly scenario: Scenario;
  readonly choices: ResponseChoices;
}
export const responses = async (
  { scenario, choices }: ResponsesAsked,
  { goesOn }: Job,
): Promise<ResponseResult[] | undefined> =>
  tryResponses(scenario, choices, await sampledOptions(scenario), goesOn);

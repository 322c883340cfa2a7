import { say as problems } from '../words/problems';
import * as v from 'valibot';
import { fold, MOST_UNFOLDED, seal, unfold, unseal } from './linkBytes';
import { readJson } from './jsonText';
import { parseScenario } from './parse';
import { sentence } from './sentence';
import type { Scenario } from './schema';

/** A plan as it travels in a link. */
export interface LinkedPlan {
  readonly name: string;
  readonly scenario: Scenario;
}

export type LinkWritten =
  | { readonly ok: true; readonly fragment: string }
  | { readonly ok: false; readonly message: string };

export type LinkRead =
  | { readonly ok: true; readonly plans: readonly LinkedPlan[] }
  | { readonly ok: false; readonly problems: readonly string[] };

const say = problems.link;

const LINK_VERSION = 1;
/** Longer addresses are cut by mail programs and chats before browsers mind. */
export const LONGEST_LINK = 30_000;
/** As many as the bench holds. */
export const MOST_LINKED = 4;

const linkSchema = v.strictObject({
  plans: v.pipe(
    v.array(
      v.strictObject({
        name: v.pipe(v.string(), v.minLength(1), v.maxLength(120)),
        scenario: v.unknown(),
      }),
    ),
    v.minLength(1),
    v.maxLength(MOST_LINKED),
  ),
});

/** The fragment of an address that carries plans: "plan/1.<base64url>". Nothing reaches a server. */
export async function writeLink(plans: readonly LinkedPlan[]): Promise<LinkWritten> {
  const carried = plans.map(({ name, scenario }) => ({ name, scenario }));
  const payload = seal(await fold(JSON.stringify({ plans: carried })));
  const fragment = `plan/${LINK_VERSION}.${payload}`;
  if (fragment.length <= LONGEST_LINK) return { ok: true, fragment };
  return {
    ok: false,
    message: say.tooLong(String(fragment.length), String(LONGEST_LINK)),
  };
}

const refuse = (...problems: string[]): LinkRead => ({ ok: false, problems });

function parsed(text: string): LinkRead {
  const json = readJson(text, problems.file.scenario, MOST_UNFOLDED);
  if (!json.ok) return refuse(say.damaged);
  const shape = v.safeParse(linkSchema, json.value);
  if (!shape.success) {
    return refuse(say.noPlans(String(MOST_LINKED)));
  }
  const read = shape.output.plans.map(({ name, scenario }) => ({
    name,
    result: parseScenario(scenario),
  }));
  const found = read.flatMap(({ name, result }) =>
    result.ok ? [] : result.problems.map((problem) => problems.named(name, sentence(problem))),
  );
  if (found.length > 0) return refuse(...found);
  return {
    ok: true,
    plans: read.flatMap(({ name, result }) =>
      result.ok ? [{ name, scenario: result.scenario }] : [],
    ),
  };
}

/** Reads what follows "plan/" in an address; every problem at once, and it never throws. */
export async function readLink(detail: string): Promise<LinkRead> {
  if (detail.length > LONGEST_LINK) {
    return refuse(say.longer(String(detail.length), String(LONGEST_LINK)));
  }
  const [, version, payload] = /^(\d+)\.(.*)$/su.exec(detail) ?? [];
  if (version === undefined || payload === undefined) return refuse(say.damaged);
  if (Number(version) > LINK_VERSION) {
    return refuse(say.newer(version.slice(0, 12), String(LINK_VERSION)));
  }
  const bytes = Number(version) === LINK_VERSION ? unseal(payload) : undefined;
  if (!bytes) return refuse(say.damaged);
  const unfolded = await unfold(bytes);
  if (unfolded.kind === 'tooLong') {
    return refuse(say.unfoldsTooLong(String(MOST_UNFOLDED)));
  }
  if (unfolded.kind === 'broken') return refuse(say.damaged);
  return parsed(unfolded.text);
}

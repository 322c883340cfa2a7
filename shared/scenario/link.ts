import * as v from 'valibot';
import { fold, MOST_UNFOLDED, seal, unfold, unseal } from './linkBytes';
import { parseScenario } from './parse';
import { sentence } from './problem';
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
    message: `These plans make a link of ${fragment.length} characters, and beyond ${LONGEST_LINK} many programs cut it. Save them as files instead, or remove a trial.`,
  };
}

const refuse = (...problems: string[]): LinkRead => ({ ok: false, problems });

const DAMAGED =
  'This link is damaged: a part is missing or was changed on the way. Ask for it again, whole, or for the plan as a file.';

function parsed(text: string): LinkRead {
  const shape = v.safeParse(linkSchema, JSON.parse(text));
  if (!shape.success) {
    return refuse(
      `This link holds something other than plans: expected 1 to ${MOST_LINKED} plans, each with a name and a scenario. Ask for it again, from Paper Reef.`,
    );
  }
  const read = shape.output.plans.map(({ name, scenario }) => ({
    name,
    result: parseScenario(scenario),
  }));
  const problems = read.flatMap(({ name, result }) =>
    result.ok ? [] : result.problems.map((problem) => `${name}: ${sentence(problem)}`),
  );
  if (problems.length > 0) return refuse(...problems);
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
    return refuse(
      `This link is ${detail.length} characters long; expected at most ${LONGEST_LINK}. Ask for the plan as a file.`,
    );
  }
  const [, version, payload] = /^(\d+)\.(.*)$/su.exec(detail) ?? [];
  if (version === undefined || payload === undefined) return refuse(DAMAGED);
  if (Number(version) > LINK_VERSION) {
    return refuse(
      `This link is of version ${version.slice(0, 12)}; this Paper Reef reads version ${LINK_VERSION}. Update Paper Reef to open it.`,
    );
  }
  const bytes = Number(version) === LINK_VERSION ? unseal(payload) : undefined;
  if (!bytes) return refuse(DAMAGED);
  const unfolded = await unfold(bytes);
  if (unfolded.kind === 'tooLong') {
    return refuse(
      `This link unfolds to more than ${MOST_UNFOLDED} bytes, which no plan needs; it was not opened.`,
    );
  }
  if (unfolded.kind === 'broken') return refuse(DAMAGED);
  try {
    return parsed(unfolded.text);
  } catch {
    return refuse(DAMAGED);
  }
}

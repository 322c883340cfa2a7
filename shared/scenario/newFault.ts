import * as v from 'valibot';
import { fault, response, type FaultId, type ResponseId } from './faults';
import type { Scenario } from './schema';

type Fault = Scenario['faults'][number];
type Response = Scenario['responses'][number];

/**
 * A fault with everything at its usual value but what is given. Files from before power cuts knew
 * of the room have none of its cold; a new one does.
 */
export const newFault = (kind: FaultId, own: Partial<Fault> = {}): Fault =>
  v.parse(fault, { kind, cooling: 'estimated', ...own });

/** A response with everything at its usual value but what is given. */
export const newResponse = (kind: ResponseId, own: Partial<Response> = {}): Response =>
  v.parse(response, { kind, ...own });

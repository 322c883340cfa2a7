import { Session, type HeapProfiler } from 'node:inspector/promises';
import type { Tree } from './bundled';

/** How often a class's method is called while some work is done. */
function calls<Method extends string>(
  type: { prototype: Record<Method, (...args: never[]) => unknown> },
  method: Method,
  work: () => void,
): number {
  const own = type.prototype[method];
  let count = 0;
  type.prototype[method] = function (...args: never[]) {
    count++;
    return own.apply(this, args);
  };
  try {
    work();
  } finally {
    type.prototype[method] = own;
  }
  return count;
}

const bytesBelow = (node: HeapProfiler.SamplingHeapProfileNode): number =>
  node.children.reduce((sum, child) => sum + bytesBelow(child), node.selfSize);

/** MiB that some work puts on the heap, those included that are collected meanwhile. */
async function mib(work: () => void): Promise<number> {
  const session = new Session();
  session.connect();
  await session.post('HeapProfiler.startSampling', {
    samplingInterval: 2048,
    includeObjectsCollectedByMajorGC: true,
    includeObjectsCollectedByMinorGC: true,
  });
  work();
  const { profile } = await session.post('HeapProfiler.stopSampling');
  session.disconnect();
  return bytesBelow(profile.head) / 2 ** 20;
}

/** Looks at the water, steps and MiB of one run. */
export const counted = async ({ subject }: Tree, work: () => void) => ({
  looks: calls(subject.TankView, 'read', work),
  steps: calls(subject.Stride, 'take', work),
  mib: await mib(work),
});

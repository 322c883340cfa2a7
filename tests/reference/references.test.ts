import { expect, it } from 'vitest';
import { references } from '../../shared/references';
import { fittedRanges } from '../../shared/seawater';

it('gives every DOI in the form 10.registrant/suffix, and none twice', () => {
  const dois = Object.values(references).flatMap((r) => ('doi' in r ? [r.doi] : []));
  expect(dois.filter((doi) => !/^10\.\d{4}\/\S+$/.test(doi))).toEqual([]);
  expect(new Set(dois).size).toBe(dois.length);
});

it('holds the source of every fit', () => {
  for (const { source } of Object.values(fittedRanges))
    expect(references[source].text).toMatch(/\d{4}/);
});

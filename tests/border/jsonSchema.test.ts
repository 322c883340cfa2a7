import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { jsonSchemaText } from '../../scripts/schema';

it('is the schema that ships with the scenarios, as derived today', () => {
  const shipped = readFileSync(
    new URL('../../scenarios/schema/scenario.schema.json', import.meta.url),
    'utf8',
  );
  expect(JSON.parse(shipped), 'after a change: npm run schema').toEqual(
    JSON.parse(jsonSchemaText()),
  );
});

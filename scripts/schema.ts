import { toJsonSchema } from '@valibot/to-json-schema';
import { writeFileSync } from 'node:fs';
import { scenarioSchema } from '../shared/scenario/schema';

/** The JSON Schema of a scenario file, derived from the one description in shared/scenario. */
export const jsonSchemaText = (): string =>
  `${JSON.stringify(
    {
      ...toJsonSchema(scenarioSchema, { typeMode: 'input', ignoreActions: ['check', 'finite'] }),
      title: 'Paper Reef scenario',
    },
    null,
    2,
  )}\n`;

if (process.argv[1]?.endsWith('schema.ts')) {
  writeFileSync(
    new URL('../scenarios/schema/scenario.schema.json', import.meta.url),
    jsonSchemaText(),
  );
}

// The files that editors read, made of the schemas.
import type { WrittenFile } from '../record/record.ts';
import { jsonSchemas } from './json-schemas.ts';
import { jsonText } from './json-text.ts';
import { snippets } from './snippets.ts';

/** By their path in the project: a schema for each kind of file, and the snippets. */
export function editorFiles(): WrittenFile[] {
  const schemas = Object.entries(jsonSchemas()).map(([kind, schema]) => {
    return { file: `shared/schemas/${kind}.json`, text: jsonText(schema) };
  });
  return [...schemas, { file: 'shared/editor/snippets.json', text: jsonText(snippets()) }];
}

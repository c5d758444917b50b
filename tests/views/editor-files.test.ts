import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type CompletionList, type Diagnostic, getLanguageService, TextDocument } from 'yaml-language-server';
import { kindOf } from '../../src/record/open.ts';
import { sheets } from '../../src/record/schema/sheets.ts';
import { editorFiles } from '../../src/views/editor-files.ts';
import { filesIn } from '../house/files.ts';
import { problemFolders, saysOf } from '../record/problem-folders.ts';

/** Front matter as an editor’s YAML server sees it. */
const frontOf = (text: string) => /^---\n([\s\S]*?\n)?---(?:\n|$)/.exec(text)?.[1] ?? '';

type Served = Parameters<ReturnType<typeof getLanguageService>['doValidation']>[0];
let texts = 0;

/** The server that editors use for YAML, with one of the schemas. */
function serverFor(kind: string) {
  const service = getLanguageService({
    schemaRequestService: async () => readFileSync(`shared/schemas/${kind}.json`, 'utf8'),
    workspaceContext: { resolveRelativePath: (path: string) => path },
  });
  service.configure({
    validate: true,
    completion: true,
    hover: true,
    schemas: [{ uri: `file:///${kind}.json`, fileMatch: ['*.yaml'] }],
  });
  // The server knows a text by its name.
  const document = (text: string) =>
    TextDocument.create(`file:///${kind}-${++texts}.yaml`, 'yaml', 1, text) as unknown as Served;
  return {
    wrong: async (text: string) =>
      (await service.doValidation(document(text), false)).map(
        ({ message, range }: Diagnostic) => `${range.start.line + 1}: ${message}`,
      ),
    /** What is offered where `|` stands. */
    offered: async (text: string) => {
      const at = document(text.replace('|', ''));
      const list: CompletionList = await service.doComplete(at, at.positionAt(text.indexOf('|')), false);
      return list.items.map(({ label }) => label);
    },
    said: async (text: string) => {
      const at = document(text.replace('|', ''));
      const found = await service.doHover(at, at.positionAt(text.indexOf('|')));
      return JSON.stringify(found?.contents);
    },
  };
}

describe('what editors read', () => {
  it.each(editorFiles().map(({ file, text }) => [file, text]))(
    '%s is as the schemas have it; `npm run catalogue` writes it',
    (file, text) => {
      expect(readFileSync(file, 'utf8')).toBe(text);
    },
  );

  it('is there for every kind of file', () => {
    expect(editorFiles().filter(({ file }) => file.startsWith('shared/schemas/'))).toHaveLength(
      Object.keys(sheets).length,
    );
  });
});

describe('an editor with the schemas', () => {
  const written = filesIn('content').filter(
    (file) => file.endsWith('.md') && kindOf(file.slice('content/'.length)),
  );

  it.each(Object.keys(sheets))('finds nothing wrong with any %s of the demo', async (kind) => {
    const own = written.filter((file) => kindOf(file.slice('content/'.length)) === kind);
    expect(own.length).toBeGreaterThan(0);
    const { wrong } = serverFor(kind);
    const found: string[] = [];
    for (const file of own) {
      for (const problem of await wrong(frontOf(readFileSync(file, 'utf8'))))
        found.push(`${file}:${problem}`);
    }
    expect(found).toEqual([]);
  });

  it('underlines a key and a word that nobody knows, and a key that is missing', async () => {
    const { wrong } = serverFor('entry');
    const found = await wrong(
      'hours:\n  - { part: cowl, work: metal, tim: 2h }\nmarks:\n  - { mark: A, what: bolt, as: refitted }\n',
    );
    expect(found.join('\n')).toContain('2: Property tim is not allowed.');
    expect(found.join('\n')).toContain('2: Missing property "time".');
    expect(found.join('\n')).toMatch(/4: Value is not accepted\. Valid values: .*"refit"/);
  });

  it('takes figures without quotes, and keys that are still empty', async () => {
    const { wrong } = serverFor('entry');
    const text =
      'bought:\n  - what: Bolts\n    from: keld\n    price: 46.20\n    count: 3\n    bill: 20790\n    exempt: true\nphotos:\n  - file: a.jpg\n    caption:\n    alt:\nby:\n';
    expect(await wrong(text)).toEqual([]);
    const part = serverFor('part');
    expect(
      await part.wrong(
        'name: Cowl\ngroup: Body\nplanned:\n  - { line: strip, do: Strip, work: metal, hours: [6, 9, 14], spend: 40 }\n',
      ),
    ).toEqual([]);
    expect(
      await part.wrong(
        'name: Cowl\ngroup: Body\nplanned:\n  - { line: strip, do: Strip, work: metal, hours: [1, 2, 3, 4] }\n',
      ),
    ).not.toEqual([]);
  });

  it('offers keys, words and kinds of work, and says what a key is', async () => {
    const { offered, said } = serverFor('entry');
    expect(await offered('b|')).toEqual(expect.arrayContaining(['bought', 'by']));
    expect(await offered('hours:\n  - part: cowl\n    |')).toEqual(
      expect.arrayContaining(['time', 'note', 'no-charge']),
    );
    expect(await offered('hours:\n  - part: cowl\n    work: |')).toEqual(
      expect.arrayContaining(['metal', 'timber']),
    );
    expect(await offered('photos:\n  - file: a.jpg\n    shows: |')).toEqual(
      expect.arrayContaining(['before', 'during', 'after']),
    );
    expect(await said('hours:\n  - ti|me: 2h\n')).toContain('Time worked. For example');
  });
});

describe('the snippets', () => {
  type Snippet = { prefix: string; body: string[] };
  const all = JSON.parse(readFileSync('shared/editor/snippets.json', 'utf8')) as Record<string, Snippet>;
  /** A snippet as it is when every place is left as it came. */
  const filled = ({ body }: Snippet) =>
    body
      .join('\n')
      .replace(/\$\{\d+\|([^,|]*)[^}]*\}/g, '$1')
      .replace(/\$\{\d+:((?:\\.|[^}\\])*)\}/g, (_, words: string) => words.replace(/\\(.)/g, '$1'));

  const kinds = ['level', 'diagonals', 'heights', 'straight', 'gaps', 'timber', 'thickness', 'length'];

  it('are there for a day, for every list of lines and for every kind of reading', () => {
    expect(Object.keys(all)).toEqual(
      expect.arrayContaining(['day', 'hours', 'bought', 'photos', 'paid', ...kinds]),
    );
  });

  it.each(Object.keys(all))('%s gives something right', async (name) => {
    const snippet = all[name] as Snippet;
    expect(snippet.prefix).toBe(name);
    const text = filled(snippet);
    const front =
      name === 'day' ? frontOf(text) : `${kinds.includes(name) ? 'measured' : name}:\n  ${text}\n`;
    expect(front).not.toContain('$');
    expect(await serverFor('entry').wrong(front)).toEqual([]);
  });
});

describe('the task', () => {
  const { tasks } = JSON.parse(readFileSync('shared/editor/tasks.json', 'utf8')) as {
    tasks: {
      problemMatcher: {
        pattern: { regexp: string };
        background: { beginsPattern: string; endsPattern: string };
      };
    }[];
  };
  const [task] = tasks;
  const pattern = new RegExp(task?.problemMatcher.pattern.regexp ?? '');

  it('finds file, line, column and words in every problem as check prints it', () => {
    const lines = problemFolders
      .flatMap((name) => saysOf(name).split('\n'))
      .filter((line) => /^\S/.test(line));
    expect(lines.length).toBeGreaterThan(60);
    for (const line of lines) {
      const [, file = '', at, column, severity] = pattern.exec(line) ?? [];
      expect(line.startsWith(`${file}:${at}:${column}  ${severity}  `), line).toBe(true);
      expect(file).toMatch(/\.(md|jpg|mov)$/i);
    }
  });

  it('names schemas that are there', () => {
    const settings = JSON.parse(readFileSync('shared/editor/settings.json', 'utf8')) as {
      'yaml.schemas': Record<string, string>;
    };
    for (const path of Object.keys(settings['yaml.schemas'])) {
      expect(existsSync(path.replace('../ashframe/', '')), path).toBe(true);
    }
  });
});

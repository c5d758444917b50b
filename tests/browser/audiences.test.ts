// What each audience gets, looked for in every byte of what is built.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { emptyFolderFor, npmRun } from '../commands/run.ts';
import {
  CAMERA_WORD,
  OWNER_AMOUNTS,
  OWNER_WORD,
  PRIVATE_PHOTOS,
  SHOP_AMOUNTS,
  SHOP_WORD,
} from '../record/private.ts';
import { writePrivate } from '../record/private-folder.ts';
import { type Built, buildSite } from './built.ts';

const built = new Map<string, Built>();
let record: Awaited<ReturnType<typeof emptyFolderFor>>;

beforeAll(async () => {
  record = await emptyFolderFor('record');
  await writePrivate(record.folder);
  for (const audience of ['shop', 'owner', 'history'] as const) {
    built.set(audience, await buildSite(record.folder, audience));
  }
}, 240_000);
afterAll(async () => {
  for (const site of built.values()) await site.remove();
  await record?.remove();
});

/** Every file of a build in which a text stands, in its name or in any of its bytes. */
function filesWith(audience: string, text: string): string[] {
  const folder = built.get(audience)?.folder ?? '';
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return files.filter((file) => {
    if (file.includes(text)) return true;
    const path = join(folder, file);
    return statSync(path).isFile() && readFileSync(path).includes(text);
  });
}

/** An amount as a page has it, with its comma, and, where it can be told from other figures, as a script has it. */
const writtenAs = (amount: string) => {
  const [whole = '', cents] = amount.split('.');
  const shown = `${whole.replace(/(?=(?:\d{3})+$)(?!^)/g, ',')}${cents ? `.${cents}` : ''}`;
  const minor = `${whole}${cents ?? '00'}`;
  return minor.length > 5 ? [shown, minor] : [shown];
};

describe('what stays in the shop', () => {
  it('is on the shop’s own pages', () => {
    const only = filesWith('shop', `${SHOP_WORD} only`);
    expect(only).toEqual(['day/2025-03-03.html']);
    for (const amount of SHOP_AMOUNTS.slice(1)) expect(filesWith('shop', amount)).not.toEqual([]);
    expect(filesWith('shop', 'The shop’s own copy').length).toBeGreaterThan(20);
  });

  it.each(['owner', 'history'])('is in no byte of what the %s gets', (audience) => {
    for (const text of [SHOP_WORD, ...SHOP_AMOUNTS, 'The shop’s own', 'Costs the shop', 'log/2025-']) {
      expect([text, filesWith(audience, text)]).toEqual([text, []]);
    }
    const { pages = [] } = built.get(audience) ?? {};
    expect(pages).not.toContain('problems.html');
    expect(pages).not.toContain('earned.html');
  });
});

describe('what is between the shop and the owner', () => {
  it.each(['shop', 'owner'])('is on pages that the %s gets', (audience) => {
    expect(built.get(audience)?.pages).toContain('statement/001.html');
    for (const field of ['bill', 'no charge', 'word', 'transfer', 'agreed note', 'tax']) {
      expect([field, filesWith(audience, `${OWNER_WORD} ${field}`).length > 0]).toEqual([field, true]);
    }
    for (const amount of OWNER_AMOUNTS.slice(0, 4).flatMap((each) => writtenAs(each).slice(0, 1))) {
      expect([amount, filesWith(audience, amount).length > 0]).toEqual([amount, true]);
    }
  });

  it('is not the name of a thing that an option would buy, which the history gives without its price', () => {
    for (const audience of ['owner', 'history'])
      expect(filesWith(audience, 'Sheet steel, from Millrace Metals')).toContain('choice/corners.html');
  });

  it('is in no byte of the history', () => {
    for (const text of [OWNER_WORD, ...OWNER_AMOUNTS.flatMap(writtenAs)]) {
      expect([text, filesWith('history', text)]).toEqual([text, []]);
    }
    const { pages = [] } = built.get('history') ?? {};
    const money = /^(costs|forecast|statements|orders|order|problems|earned)\.html|^(lines|statement)\//;
    expect(pages.filter((page) => money.test(page))).toEqual([]);
    const amounts = pages.filter((page) =>
      /\$\s?\d/.test(readFileSync(join(built.get('history')?.folder ?? '', page), 'utf8')),
    );
    expect(amounts).toEqual([]);
  });
});

describe('the front page', () => {
  const told = (audience: string) => {
    const html = readFileSync(join(built.get(audience)?.folder ?? '', 'index.html'), 'utf8');
    const [, json] = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(html) ?? [];
    return json && JSON.parse(json);
  };

  it.each(['owner', 'history'])('tells programs what the car is, to the %s', (audience) => {
    expect(told(audience)).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'Vehicle',
      name: 'Aldermere Fourteen',
      productionDate: '1934',
      vehicleIdentificationNumber: '14/1187',
      knownVehicleDamages: expect.stringContaining('Cowl, found damaged: both lower corners gone'),
      subjectOf: { '@type': 'CreativeWork', contributor: [{ '@type': 'Person', name: 'Tobias Reeve' }, {}] },
    });
  });

  it('tells them nothing in the shop’s own copy', () => {
    expect(told('shop')).toBeUndefined();
  });
});

describe('what a camera wrote', () => {
  it('is in the record’s own pictures', () => {
    for (const file of PRIVATE_PHOTOS) {
      const bytes = readFileSync(join(record.folder, file));
      for (const field of ['artist', 'described', 'place']) {
        expect(bytes.includes(`${CAMERA_WORD} ${field}`)).toBe(true);
      }
    }
  });

  it.each(['owner', 'history'])(
    'and the name it gave a picture are in no byte that the %s gets',
    (audience) => {
      const { folder = '' } = built.get(audience) ?? {};
      const pictures = readdirSync(join(folder, 'pictures'));
      expect(pictures.length).toBeGreaterThan(1);
      expect(filesWith(audience, CAMERA_WORD)).toEqual([]);
    },
  );

  it('is of its pictures’ names alone in the shop, where one lacks its words', () => {
    expect(filesWith('shop', `${CAMERA_WORD}-`)).toEqual(['photos.html', 'problems.html']);
    expect(filesWith('shop', `${CAMERA_WORD} `)).toEqual([]);
  });
});

describe('npm run build -- --for', () => {
  it('knows three audiences', async () => {
    const { code, err } = await npmRun('build', ['--for', 'neighbor'], record.folder);
    expect([code, err.split('\n')[0]]).toEqual([
      2,
      'Unexpected `neighbor`, expected shop, owner or history.',
    ]);
  });
});

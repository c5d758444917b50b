// What an owner may not see, looked for in every octet of what is printed for one.
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { printChoice } from '../../src/handover/print-choice.ts';
import { printStatement } from '../../src/handover/print-statement.ts';
import type { CarRecord } from '../../src/record/record.ts';
import { statementOf } from '../../src/views/statement-asked.ts';
import { emptyFolder } from '../commands/run.ts';
import {
  CAMERA_WORD,
  OWNER_WORD,
  openPrivate,
  PRIVATE_PHOTOS,
  SHOP_AMOUNTS,
  SHOP_WORD,
} from '../record/private.ts';
import { aboutOf, openedUp, wordsOf } from './pdf.ts';

/** A picture that says in its EXIF who took it. */
const fromACamera = () =>
  sharp({ create: { width: 160, height: 120, channels: 3, background: '#7f9887' } })
    .withExif({ IFD0: { Artist: `${CAMERA_WORD} artist`, ImageDescription: `${CAMERA_WORD} described` } })
    .jpeg()
    .toBuffer();

async function prints(edition: 'archive' | 'reading') {
  const folder = await emptyFolder();
  for (const file of PRIVATE_PHOTOS) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), await fromACamera());
  }
  const { record: whole } = openPrivate();
  if (!whole) throw new Error('The record can’t be opened.');
  const press = { edition, made: '2026-05-29' } as const;
  // The words of the shop are gone before the statement is looked for.
  const find = (record: CarRecord) => {
    expect(JSON.stringify(whole)).toContain(SHOP_WORD);
    expect(JSON.stringify(record)).not.toContain(SHOP_WORD);
    return statementOf(record, {});
  };
  const source = { whole, folder, cache: join(folder, 'cache') };
  return {
    decided: (await printChoice(source, 'corners', press)).printed?.pdf,
    open: (await printChoice(source, 'paint', press)).printed?.pdf,
    statement: (await printStatement(whole, find, press)).printed?.pdf,
  };
}

describe.each(['archive', 'reading'] as const)('the %s edition of what an owner is given', (edition) => {
  it('holds the owner’s words and none of the shop’s or the camera’s', async () => {
    const all = await prints(edition);
    for (const [what, pdf] of Object.entries(all)) {
      if (!pdf) throw new Error(`${what} wasn’t printed.`);
      const { words } = await wordsOf(pdf);
      const file = openedUp(pdf);
      const about = JSON.stringify(await aboutOf(pdf));
      for (const word of [SHOP_WORD, CAMERA_WORD]) {
        for (const [where, text] of Object.entries({ words, file, about }))
          expect([what, where, text.includes(word)]).toEqual([what, where, false]);
      }
      for (const amount of SHOP_AMOUNTS) expect([what, words.includes(amount)]).toEqual([what, false]);
      expect([what, words.includes('Aldermere Fourteen')]).toEqual([what, true]);
    }
    const seen = async (pdf: Buffer | undefined) => (await wordsOf(pdf as Buffer)).words;
    expect(await seen(all.decided)).toContain(`${OWNER_WORD} name`);
    expect(await seen(all.statement)).toContain(`${OWNER_WORD} bill`);
    // The pictures are there, so that what they carry could have come with them.
    for (const pdf of [all.decided, all.open]) expect(openedUp(pdf as Buffer)).toContain('A green cowl.');
  });
});

import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { descriptionOf, howToRead, identifierOf, startHere } from '../../src/views/hand-over.ts';
import { pictureWords } from '../../src/views/picture-words.ts';
import { PLANTED, planted } from '../handover/planted.ts';

const { record, photos } = planted();
const about = {
  record,
  made: '2026-05-29',
  sum: 'ab12'.repeat(16),
  books: [{ file: 'book/book.pdf', says: 'This edition is made to be kept.' }],
  originals: false,
  costs: false,
  unread: 0,
};

describe('the words on top of a hand-over', () => {
  it('name the car as no other is named', () => {
    expect(identifierOf(record)).toBe('Aldermere Fourteen, chassis 14/1187');
    expect(descriptionOf(record)).toBe(
      'The record of the restoration of one car, Aldermere Fourteen: pages, a bound book, the texts it was kept in, tables and photographs. Drophead coupe, 1934, body No. 218 by Tarrowby. Chassis 14/1187.',
    );
  });

  it('begin with a page in right HTML that loads nothing and links to files alone', async () => {
    const page = startHere(about);
    const validate = new HtmlValidate({ extends: ['html-validate:recommended'] });
    const { valid, results } = await validate.validateString(page);
    expect(results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([]);
    expect(valid).toBe(true);
    const links = [...page.matchAll(/href="([^"]+)"/g)].map(([, to]) => to);
    expect(links).toEqual([
      'data/site/index.html',
      'data/book/book.pdf',
      'HOW-TO-READ.txt',
      'manifest-sha256.txt',
    ]);
    expect(page).not.toMatch(/<script|src=|https?:|url\(/);
    expect(page).toContain(`<code>${about.sum}</code>`);
  });

  it('write a name that would be HTML as words', () => {
    const odd = planted({
      'car.md':
        '---\nname: "A <b>14</b> & \\"co\\""\nbuilt: 1934\nopened: 2025-02-03\nunits: inch\ncurrency: USD\n---\n',
    });
    const page = startHere({ ...about, record: odd.record });
    expect(page).toContain('<h1>A &lt;b&gt;14&lt;/b&gt; &amp; &quot;co&quot;</h1>');
  });

  it('say in plain text what each thing is and how to check it, in lines that fit', () => {
    const text = howToRead(about);
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    for (const named of [
      'data/site/index.html',
      'data/book/book.pdf',
      'data/record',
      'data/record/photos',
      'data/tables',
    ])
      expect(text).toContain(named);
    expect(text).toContain("\n    grep -v '  data/book/' manifest-sha256.txt | sha256sum\n");
    expect(text).toContain(`\n    ${about.sum}\n`);
    expect(inOneLine(text)).toContain('no place and no camera’s number');
    expect(inOneLine(howToRead({ ...about, originals: true }))).toContain('as the cameras wrote them');
  });

  it('say what was left out, and where it is said what the work came to', () => {
    const text = inOneLine(howToRead(about));
    expect(text).toContain('Nor is there any amount of money, since none was asked for.');
    expect(text).toContain('A 0 there doesn’t mean that it cost nothing.');
    expect(text).not.toContain('couldn’t be read');
    expect(text).not.toContain('came-to.html');
    const all = inOneLine(howToRead({ ...about, costs: true, unread: 1 }));
    expect(all).toContain('as sums alone');
    expect(all).not.toContain('since none was asked for');
    expect(all).toContain('Pictures that no text names were left out. One that is named couldn’t be read.');
    expect(startHere({ ...about, costs: true })).toContain('href="data/site/came-to.html"');
  });

  it('say nothing private', () => {
    for (const text of [startHere(about), howToRead(about), descriptionOf(record)])
      expect(text).not.toContain(PLANTED);
  });
});

const inOneLine = (words: string) => words.replace(/\s+/g, ' ');

describe('the words in a picture', () => {
  it('are those of the entry that lists it', () => {
    expect(pictureWords(record, photos)('photos/2025-03-03/IMG_1.jpg')).toEqual({
      title: 'Aldermere Fourteen',
      caption: 'The cowl as it came.',
      alt: 'A rusty cowl with lead on its left side.',
      day: '2025-03-03',
      by: 'Harrow Bend Coachworks',
    });
    expect(pictureWords(record, photos)('photos/2025-03-03/IMG_9.jpg')).toMatchObject({
      caption: '',
      alt: '',
      day: '',
    });
  });
});

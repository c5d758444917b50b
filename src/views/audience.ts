// What each audience gets: which pages there are, and which columns and blocks stand on them.
import type { Audience } from '../record/schema/fields.ts';
import { page } from './links.ts';

export type { Audience };

/** What pages show one audience. A link to a page is set only where `has` is true of it. */
export type Sees = {
  audience: Audience;
  /** The shop’s own: checks, what it costs the shop, files and lines of the record. */
  shop: boolean;
  /** Amounts, and what follows from them. */
  money: boolean;
  /** What the work came to, on a page of its own, in a history that was asked to say it. */
  came: boolean;
  has: (path: string) => boolean;
};

/** `costs`: a history is asked to say what the work came to. */
export function seesOf(audience: Audience, costs = false): Sees {
  const shop = audience === 'shop';
  const money = audience !== 'history';
  const came = costs && !money;
  return {
    audience,
    shop,
    money,
    came,
    has: (path) => {
      const file = path.replace(/#.*$/, '');
      if (file === page.cameTo) return came;
      return (shop || !SHOP.includes(file)) && (money || !MONEY.some((own) => own.test(file)));
    },
  };
}

const SHOP: readonly string[] = [page.problems, page.earned];

/** Pages of money and of work still ahead: a history has neither, nor their sheet, nor the script that moves figures. */
const MONEY = [
  /^(?:costs|forecast|statements|orders|order)\.html$/,
  /^(?:lines|statement)\//,
  /^script\/what-if\.js$/,
  /^style\/statement\.css$/,
];

/** Where a build lies unless a folder is named: each audience has its own. */
export const BUILT: { [audience in Audience]: string } = {
  shop: 'dist',
  owner: 'dist-owner',
  history: 'dist-history',
};

/** The audience that was named; the shop where none was, nothing where there is no such one. */
export function audienceNamed(written: string | undefined): Audience | undefined {
  if (!written) return 'shop';
  return Object.keys(BUILT).find((audience): audience is Audience => audience === written);
}

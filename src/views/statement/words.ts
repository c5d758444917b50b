// What a line of the owner's account says beside its amounts, and the letters of its taxes.
import type { LineTax } from '../../estimate/charged-tax.ts';
import { minutesText } from '../../figures/hours.ts';
import type { Minor } from '../../figures/money.ts';
import { shareText } from '../../figures/shares.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Changed } from '../../rollup/account.ts';
import { type StatedLine, type StatedRule, sameRule } from '../../rollup/stated-lines.ts';
import { datedText } from '../dated.ts';
import { namesOf } from '../names.ts';

type Terms = Pick<LineTax<StatedRule>, 'rule' | 'within'>;

/** A letter for each tax of a statement, in its order: A, B … Z, AA. */
export function taxLetters(taxes: readonly Terms[]): (tax: Terms) => string {
  const signs = taxes.map(signOf);
  return (tax) => letterOf(signs.indexOf(signOf(tax)));
}

const signOf = ({ rule, within }: Terms) => `${sameRule(rule)} ${within ?? ''}`;

function letterOf(at: number): string {
  return (at >= 26 ? letterOf(Math.floor(at / 26) - 1) : '') + String.fromCharCode(65 + (at % 26));
}

/** The part and who worked, what was worked where that is not what is charged, and why nothing is. */
export function hoursNotes(line: StatedLine, record: CarRecord): string[] {
  const names = namesOf(record);
  const { part, person, work, what, minutes, timed, noCharge, inPrice, exempt } = line;
  const worked = minutes !== undefined && minutes !== (timed?.minutes ?? 0);
  return [
    [
      part === undefined ? '' : names.part(part),
      work === undefined || work === what ? '' : work,
      names.person(person),
    ]
      .filter((word) => word !== '')
      .join(', '),
    worked ? `worked ${minutesText(minutes)}` : '',
    noCharge === undefined ? '' : `no charge: ${noCharge}`,
    inPrice ? 'within a price fixed beforehand' : '',
    exempt ? 'exempt from tax' : '',
  ].filter((note) => note !== '');
}

/** The part, and the letters of the taxes that the line is under. */
export function billNotes(
  { part, byOwner, exempt, taxes }: StatedLine,
  record: CarRecord,
  letter: (tax: Terms) => string,
): string[] {
  return [
    [
      part === undefined ? '' : namesOf(record).part(part),
      taxes.length === 0 ? '' : `tax ${taxes.map(letter).join(', ')}`,
      exempt ? 'exempt from tax' : '',
    ]
      .filter((word) => word !== '')
      .join(', '),
    byOwner ? 'the owner’s own bill, charged nothing' : '',
  ].filter((note) => note !== '');
}

/** What changed in a line since it was stated. */
export function changedNotes(
  { was, now, before, after, tax }: Changed,
  money: (amount: Minor) => string,
): string[] {
  if (!was) return ['written since the statement of its day'];
  if (!now) return ['no longer there'];
  const words = [
    ...(was.what === now.what ? [] : [`was “${was.what}”`]),
    ...(was.day === now.day ? [] : [`was of ${datedText(was.day)}`]),
  ];
  const taxed = tax.before === tax.after ? [] : [`its tax was ${money(tax.before)}, now ${money(tax.after)}`];
  const said = [...words, ...taxed];
  return said.length > 0 || before !== after ? said : ['reads otherwise, and comes to the same'];
}

/** How a tax was worked out: where it was rounded and how, or that the prices hold it. */
export function taxNote({ rule, within }: Terms): string {
  const rounded = `rounded ${ROUNDED[rule.rounding]}`;
  const where = rule.by === 'line' ? 'on each line' : 'once on the sum of this statement';
  if (within === undefined) return `${rounded}, ${where}`;
  const among = within === rule.rate ? '' : `, which hold ${shareText(within)} of tax in all`;
  return `held in the prices${among}: shown, and not added; ${rounded}, ${where}`;
}

const ROUNDED = { 'half-up': 'half up', 'half-even': 'half to even', down: 'down' };

// The checks, in the order in which they run: names, dates, hours, money, choices, the plan, readings, pictures.

import { afterUnknown } from './after-unknown.ts';
import { billLoggedTwice } from './bill-logged-twice.ts';
import { canFailInACircle } from './can-fail-in-a-circle.ts';
import { canFailThenMissing } from './can-fail-then-missing.ts';
import type { Check } from './check.ts';
import { choiceWithoutAnswer } from './choice-without-answer.ts';
import { decidedAndWithdrawn } from './decided-and-withdrawn.ts';
import { decidedBeforeAsked } from './decided-before-asked.ts';
import { decidedOptionMissing } from './decided-option-missing.ts';
import { decidedWithoutMark } from './decided-without-mark.ts';
import { depositNotReturned } from './deposit-not-returned.ts';
import { discountAbovePrice } from './discount-above-price.ts';
import { entryAfterClosed } from './entry-after-closed.ts';
import { entryBeforeOpened } from './entry-before-opened.ts';
import { finishedBeforeForerunner } from './finished-before-forerunner.ts';
import { finishedTwice } from './finished-twice.ts';
import { finishedWithoutWork } from './finished-without-work.ts';
import { fixedPriceWithoutLines } from './fixed-price-without-lines.ts';
import { futureDate } from './future-date.ts';
import { hazardNotNamed } from './hazard-not-named.ts';
import { heightsNeedPoints } from './heights-need-points.ts';
import { hoursFitInADay } from './hours-fit-in-a-day.ts';
import { idTwice } from './id-twice.ts';
import { leftOfFinishedLine } from './left-of-finished-line.ts';
import { lineNameTwice } from './line-name-twice.ts';
import { lineOfAnotherPart } from './line-of-another-part.ts';
import { lineWaitsInACircle } from './line-waits-in-a-circle.ts';
import { longDay } from './long-day.ts';
import { markUsedTwice } from './mark-used-twice.ts';
import { materialsRuleUnclear } from './materials-rule-unclear.ts';
import { mountName } from './mount-name.ts';
import { noRateForTheDay } from './no-rate-for-the-day.ts';
import { optionLineIncomplete } from './option-line-incomplete.ts';
import { optionNameTwice } from './option-name-twice.ts';
import { orderOverdue } from './order-overdue.ts';
import { pairWithoutPartner } from './pair-without-partner.ts';
import { personNotSaid } from './person-not-said.ts';
import { photoMissing } from './photo-missing.ts';
import { photoNameNotEverywhere } from './photo-name-not-everywhere.ts';
import { photoNamedTwice } from './photo-named-twice.ts';
import { photoNamesAlike } from './photo-names-alike.ts';
import { photoNeverNamed } from './photo-never-named.ts';
import { photoWithoutWords } from './photo-without-words.ts';
import { priceDiffersFromOrder } from './price-differs-from-order.ts';
import { rateRulesTie } from './rate-rules-tie.ts';
import { readingOutOfSense } from './reading-out-of-sense.ts';
import { receivedNeverOrdered } from './received-never-ordered.ts';
import { returnedMoreThanBought } from './returned-more-than-bought.ts';
import { settledTwice } from './settled-twice.ts';
import { settlesUnknown } from './settles-unknown.ts';
import { spendWithoutWord } from './spend-without-word.ts';
import { statementChanged } from './statement-changed.ts';
import { statementNumber } from './statement-number.ts';
import { statementOutOfLine } from './statement-out-of-line.ts';
import { taxAgainstRules } from './tax-against-rules.ts';
import { testEndsBeforeItBegins } from './test-ends-before-it-begins.ts';
import { unknownChoice } from './unknown-choice.ts';
import { unknownLine } from './unknown-line.ts';
import { unknownPart } from './unknown-part.ts';
import { unknownPerson } from './unknown-person.ts';
import { unknownVendor } from './unknown-vendor.ts';
import { unknownWork } from './unknown-work.ts';
import { workBeforeForerunner } from './work-before-forerunner.ts';
import { workOnFinishedLine } from './work-on-finished-line.ts';

export const checks: readonly Check[] = [
  unknownPart,
  unknownLine,
  afterUnknown,
  unknownVendor,
  unknownPerson,
  unknownChoice,
  unknownWork,
  photoMissing,
  idTwice,
  lineNameTwice,
  optionNameTwice,
  lineOfAnotherPart,
  lineWaitsInACircle,
  futureDate,
  entryBeforeOpened,
  entryAfterClosed,
  testEndsBeforeItBegins,
  personNotSaid,
  hoursFitInADay,
  longDay,
  noRateForTheDay,
  rateRulesTie,
  materialsRuleUnclear,
  billLoggedTwice,
  discountAbovePrice,
  returnedMoreThanBought,
  depositNotReturned,
  orderOverdue,
  receivedNeverOrdered,
  priceDiffersFromOrder,
  taxAgainstRules,
  spendWithoutWord,
  statementChanged,
  statementNumber,
  statementOutOfLine,
  decidedOptionMissing,
  optionLineIncomplete,
  canFailThenMissing,
  canFailInACircle,
  settlesUnknown,
  settledTwice,
  fixedPriceWithoutLines,
  decidedBeforeAsked,
  decidedAndWithdrawn,
  choiceWithoutAnswer,
  decidedWithoutMark,
  finishedBeforeForerunner,
  workBeforeForerunner,
  finishedTwice,
  finishedWithoutWork,
  workOnFinishedLine,
  leftOfFinishedLine,
  hazardNotNamed,
  readingOutOfSense,
  heightsNeedPoints,
  mountName,
  markUsedTwice,
  photoNeverNamed,
  photoNamedTwice,
  photoNamesAlike,
  photoNameNotEverywhere,
  photoWithoutWords,
  pairWithoutPartner,
];

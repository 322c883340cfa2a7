import { conversionOf, type DisplayUnits } from '../../../shared/units/display';
import { inputText, numberText, withDecimal } from '../../../shared/units/format';
import { say as quantities } from '../../../shared/words/quantities';
import { say } from '../../../shared/words/reasons';
import type { LineResult } from '../../../shared/verdict/lineResult';
import type { LineQuantity } from '../../../shared/verdict/lines';
import { lineTexts } from '../lineTexts';
import { dayOf } from '../../../shared/verdict/measures';
import { phText } from '../texts';

/** Lines that mean harm have a sentence of their own; so has what moves too fast. */
const HARM = ['oxygenHarm', 'phHarm', 'alkalinityHarm', 'temperatureHarm'] as const;
type Harm = (typeof HARM)[number];
const isHarm = (id: string): id is Harm => (HARM as readonly string[]).includes(id);

const valueText = (quantity: LineQuantity, value: number, display: DisplayUnits): string => {
  const { unit, format } = lineTexts[quantity];
  if (quantity === 'ph') return withDecimal(phText(value), display);
  const digits = (format(1.23456).split('.')[1] ?? '').length;
  return `${numberText(value, digits, unit, display)} ${conversionOf(unit, display).unit}`.trim();
};

/** "reaches 9.20 on day 3 (your limit 8.6)". */
function sideText({ quantity, trouble, worst, worstH, limit }: LineResult, display: DisplayUnits) {
  const told = trouble === 'above' ? say.outside.reaches : say.outside.sinks;
  const { unit } = lineTexts[quantity];
  return told(
    valueText(quantity, worst, display),
    String(dayOf(worstH)),
    inputText(limit, 0.1, unit, display),
  );
}

/** What left the keeper's bands, quantity by quantity. */
function bandsSentence(lines: readonly LineResult[], display: DisplayUnits): string {
  const parts = [...new Set(lines.map(({ quantity }) => quantity))].map((quantity) => {
    const sides = lines
      .filter((line) => line.quantity === quantity)
      .map((line) => sideText(line, display));
    return `${lineTexts[quantity].name} ${sides.join(say.outside.and)}`;
  });
  return parts.length > 0 ? say.outside.all(parts.join('; ')) : '';
}

function changeSentence({ worst, worstH, limit }: LineResult, display: DisplayUnits): string {
  return say.tooFast(
    `${numberText(worst, 2, 'dKH', display)} ${conversionOf('dKH', display).unit}`,
    String(dayOf(worstH)),
    inputText(limit, 0.1, 'dKH', display),
  );
}

/** From when harm is expected, and of what. */
function harmSentence(line: LineResult, display: DisplayUnits): string {
  const { quantity, limit, firstH } = line;
  const { unit } = lineTexts[quantity];
  const text = `${inputText(limit, 0.1, unit, display)} ${conversionOf(unit, display).unit}`.trim();
  return isHarm(line.id) ? say.harm[line.id](text, String(dayOf(firstH!))) : '';
}

/** Everything that was passed, in sentences: harm first, then bands, then what moved too fast. */
export function outsideSentences(
  passed: readonly LineResult[],
  display: DisplayUnits,
): readonly string[] {
  const harm = HARM.flatMap((id) => passed.filter((line) => line.id === id));
  const change = passed.filter(({ id }) => id === 'alkalinityChange');
  const bands = passed.filter((line) => !harm.includes(line) && !change.includes(line));
  return [
    ...harm.map((line) => harmSentence(line, display)),
    bandsSentence(bands, display),
    ...change.map((line) => changeSentence(line, display)),
  ].filter((text) => text !== '');
}

/** What "inside" rests on. */
export const watchedText = (lines: readonly LineResult[]): string => {
  const names = [...new Set(lines.map(({ quantity }) => lineTexts[quantity].name))];
  return quantities.listed(names.slice(0, -1).join(', '), names.at(-1)!);
};

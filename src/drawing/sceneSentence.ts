import { asSentence } from '../../shared/words/sentence';
import { say } from '../../shared/words/drawing';
import { quantityText } from '../../shared/units/format';
import type { DisplayUnits } from '../../shared/units/display';
import { momentText } from '../say/clockText';
import { phText } from '../say/texts';
import { figure, figureText } from '../../shared/words/figure';
import type { Scene } from './scene';

/** Less than can be told apart. */
const LEAST_DKH = 0.0005;
/** As good as in balance, as a share. */
const BALANCED = 0.01;

function lightWord(light: number): string {
  if (light <= 0) return say.lightOff;
  return light >= 0.999 ? say.lightOn : say.lightDim;
}

function co2Sentence({ roomPco2Uatm, waterPco2Uatm }: Scene): string {
  if (Math.abs(roomPco2Uatm / waterPco2Uatm - 1) < BALANCED) return say.co2Rests;
  const told = roomPco2Uatm > waterPco2Uatm ? say.co2In : say.co2Out;
  return told(figure(roomPco2Uatm, 0), figure(waterPco2Uatm, 0));
}

/** The drawing in sentences, for whoever does not see it. */
export function sceneSentence(scene: Scene, clockHour: number, display: DisplayUnits): string {
  const dkh = (value: number, digits: number) => quantityText(value, digits, 'dKH', display);
  const litres = (value: number) => quantityText(value, 1, 'L', display);
  const { tookDkh, broughtDkh, reservoirShare, reservoirL, failing, ph } = scene;
  const moves = tookDkh >= LEAST_DKH || broughtDkh >= LEAST_DKH;
  const told = [
    say.sentence(
      ...([momentText(scene.timeH, clockHour), lightWord(scene.light)] as const),
      ...([dkh(scene.alkalinityDkh, 2), figureText(phText(scene.phNbs))] as const),
    ),
    ph === 'inside' ? '' : say[ph],
    failing.length > 0 ? say.failing(failing.join(', ')) : '',
    moves ? say.hour(dkh(tookDkh, 3), dkh(broughtDkh, 3)) : say.nothingMoves,
    co2Sentence(scene),
    reservoirShare === undefined
      ? ''
      : reservoirL < 0.01
        ? say.empty
        : say.reservoirHolds(litres(reservoirL), quantityText(scene.toppedOffL, 2, 'L', display)),
    say.grown(quantityText(scene.skeletonG, 1, 'g', display)),
    scene.levelShare >= 0.99 ? say.runsOver : '',
  ]
    .filter(Boolean)
    .join(' ');
  return asSentence(told);
}

import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  protections: {
    title: 'Was es verhindern würde',
    why: 'Derselbe Ausfall, ohne dass jemand ihn bemerkt: in Ihrem Plan, wie er ist, und mit einer Sache von Anfang an.',
    ask: 'Ausprobieren, was es verhindert',
    trying: 'Eines nach dem anderen wird ausprobiert …',
    none: 'Für diesen Ausfall ist keine Vorkehrung bekannt, die sich berechnen lässt. Was hilft, steht auf der Prüfliste unten.',
    caption: 'Was jede für sich bringt; die mit den wenigsten überschrittenen Grenzen zuerst',
    with: 'Vorkehrung',
    buys: 'Was sie bringt',
    passes: 'Überschrittene Grenzen',
    ofNow: (withIt, without) => `${withIt} statt ${without}`,
    worse: 'Weggelassen, weil dadurch etwas anderes über seine Grenze ginge:',
    stale: 'Der Ausfall ist seitdem geändert.',
    names: {
      secondSwitch: (litres) => `ein zweiter Schalter ${litres} L über dem Stand`,
      runLimit: (minutes) => `eine Laufzeitgrenze von ${minutes} min je Stunde`,
      halfReservoir: 'der halbe Behälter',
      halfStrength: 'die halbe Stärke',
      halfPump: 'die halbe Pumpe',
      plain: 'reines Wasser im Behälter',
      antiSiphon: 'das Schlauchende über dem Wasser',
      halfBottle: 'halb volle Flaschen',
      weakerStock: 'halb so starke Lösung, doppelt so viele mL',
      twoHeaters: 'zwei Heizer mit halber Leistung',
      cutOut: 'ein zweiter Thermostat, der an Ihrer Grenze abschaltet',
      batteryAir: 'eine Batterie-Luftpumpe, die von selbst anläuft',
      halfChange: 'halb so viel Wasser beim Wechsel',
    },
  },
};

import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  faults: {
    topOffOn: 'Nachfüllpumpe läuft ununterbrochen',
    topOffOff: 'Nachfüllung steht, oder ihr Behälter ist leer',
    sensorLow: 'Niveausensor misst zu niedrig',
    siphon: 'Nachfüllung läuft als Heber leer',
    strongMix: 'Nachfüllbehälter in falscher Stärke angesetzt',
    slurry: 'Bodensatz im Nachfüllbehälter aufgerührt',
    doserOn: 'Dosierpumpe läuft ununterbrochen',
    doserOff: 'Dosierpumpe steht',
    doserRate: 'Dosierpumpe gibt die falsche Menge',
    wrongNewWater: 'falsches neues Wasser beim Wasserwechsel',
    heater: 'Heizer oder Kühler fällt aus',
    powerCut: 'Stromausfall',
    roomCo2: 'CO₂ im Raum steigt',
    overdose: 'Überdosis von Hand',
  },
  responses: {
    aerate: 'stärker belüften',
    batteryAir: 'Luft oder Wasser ohne Netzstrom bewegen',
    co2Air: 'CO₂-reichere Luft einblasen',
    carbonatedWater: 'kohlensaures Wasser, jede Stunde eine Portion',
    extraChange: 'Wasser wechseln',
  },
};

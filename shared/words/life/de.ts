import type { Words } from '../words';
import type { en } from './en';

const practice = 'Gängige Praxis.';

export const de: Words<typeof en> = {
  corals: {
    title: 'Korallen',
    help: 'Wie viel Alkalinität sie entnehmen und wie das wächst.',
    measuredAs: {
      title: 'Bekannt als',
      help: 'Tagesverbrauch des ganzen Beckens oder eine Rate je Quadratmeter lebender Koralle.',
    },
    useDkhPerDay: {
      title: 'Alkalinitätsverbrauch',
      help: 'Gesamtverlust, alles eingeschlossen: auch was Futter und Nitrat nehmen. Gängige Praxis: 0–0,3 neue oder Weichkorallen, 0,5–1,5 gemischt, 1,5–4 dichter Steinkorallenbesatz.',
      measure:
        'Zwei Tests zur selben Uhrzeit im Abstand einiger Tage bei bekannter Dosierung: Abfall + Dosis, je Tag.',
    },
    rateMmolPerM2PerDay: {
      title: 'Kalkbildung der lebenden Koralle',
      help: 'mmol CaCO₃ auf einem Quadratmeter lebender Oberfläche am Tag.',
    },
    areaM2: { title: 'Lebende Korallenoberfläche' },
    lightDarkRatio: {
      title: 'Wachstum im Licht gegenüber Dunkel',
      help: 'Median der Übersichtsarbeit etwa 3 (Gattuso et al. 1999, aus dem Gedächtnis).',
    },
    omegaLaw: {
      title: 'Antwort auf die Sättigung',
      help: 'sanft: 15 % je Einheit Ω; proportional: im Gleichschritt mit Ω − 1. Beide bleiben über Ω 6 gleich und enden bei 1 (gängige Praxis): Das ist die größte Wahl in diesem Modell. Ohne sie endete ein überversorgtes Becken um mehrere dKH tiefer, und ein entleerter Behälter erreichte pH 9 bis zu eine halbe Stunde später.',
    },
    growthShape: {
      title: 'Wuchsform',
      help: 'Verzweigte Korallen wachsen im Verhältnis zu dem, was da ist; massive um eine Schicht gleicher Dicke.',
    },
    temperatureLaw: {
      title: 'Antwort auf die Temperatur',
      help: 'Glockenkurve: am besten bei 27 °C, nichts unter 18 oder über 32 (gängige Praxis); bezogen auf den Beginn.',
    },
    skeletonMgPerCa: {
      title: 'Magnesium im Skelett',
      help: 'Je Mol Calcium; Aragonit etwa 4 (aus dem Gedächtnis).',
    },
    skeletonSrPerCa: {
      title: 'Strontium im Skelett',
      help: 'Je Mol Calcium; Aragonit etwa 9 (aus dem Gedächtnis).',
    },
    growthPercentPerDay: {
      title: 'Zunahme des Verbrauchs',
      help: 'Verzweigte Korallen verdoppeln sich in 3–12 Monaten: 0,2–0,8 % am Tag (gängige Praxis).',
    },
  },
  photosynthesis: {
    title: 'Photosynthese',
    help: 'Was den pH-Wert am Tag steigen und in der Nacht fallen lässt.',
    grossMmolPerLPerDay: {
      title: 'Im Licht gebundener Kohlenstoff',
      help: 'Aus Ihren pH-Werten bei Licht an und Licht aus berechnet oder von Hand gesetzt.',
    },
    refugiumMmolPerLPerDay: {
      title: 'Nachts im Algenrefugium gebunden',
      help: 'Algen mit eigenem Licht; sie werden geerntet und also nicht wieder veratmet.',
    },
    refugiumFromHour: { title: 'Refugium beleuchtet ab' },
    refugiumHours: { title: 'Stunden Licht im Refugium' },
    respiredShare: {
      title: 'Davon wieder veratmeter Anteil',
      help: '1 bedeutet, dass das Becken von seinem eigenen Licht lebt (gängige Praxis).',
    },
  },
  oxygen: {
    title: 'Sauerstoff',
    help: 'Was das Becken atmet: das Erste, was knapp wird, wenn die Pumpen stehen.',
    stocking: {
      title: 'Besatz',
      help: 'wenige: einige Korallen, kaum ein Fisch; üblich; dicht. Es steht für 0,3, 0,6 oder 1,2 mmol Sauerstoff je Liter am Tag (gängige Praxis) und zählt nur, soweit es über das hinausgeht, was gebundener Kohlenstoff und Futter ohnehin veratmen. Es nimmt nur Sauerstoff: Der eingeschwungene Tag gibt den pH-Wert, wie Sie ihn messen, und was darüber hinaus geatmet wird, steckt schon darin.',
    },
    respirationMmolPerLPerDay: {
      title: 'Im Dunkeln geatmeter Sauerstoff',
      help: '0: nach dem Wort für den Besatz. Eine Eingabe geht dem Wort vor; sie ist nie weniger, als gebundener Kohlenstoff und Futter veratmen.',
      measure:
        'Ein Sauerstoffmessgerät nach Licht aus, Pumpen und Luft zehn Minuten lang aus: der Abfall in mg/L × 4,5 ist mmol/L am Tag.',
    },
    respirationPerTenDegrees: {
      title: 'Atmung in 10 °C wärmerem Wasser',
      help: 'Q10: so viel Mal so viel wie bei der eigenen Temperatur des Beckens, etwa 2 (gängige Praxis); 1: gleich viel. Es bewegt allein den Sauerstoff.',
    },
    perCarbon: {
      title: 'Sauerstoff je Kohlenstoff lebender Substanz',
      help: 'Der photosynthetische Quotient, 1,0–1,2; sein Kehrwert ist der respiratorische Quotient (aus dem Gedächtnis).',
    },
  },
  food: {
    title: 'Futter',
    help: 'Die verborgene Quelle von CO₂, Stickstoff und Phosphor.',
    gramsPerDay: {
      title: 'Trockenfutter',
      measure:
        'Wiegen Sie das Futter einer Woche auf der Küchenwaage; Frostfutter ist zu etwa einem Achtel trocken (10–15 %, gängige Praxis).',
    },
    carbonPercent: { title: 'Kohlenstoff im Trockenfutter', help: practice },
    nitrogenPercent: { title: 'Stickstoff im Trockenfutter', help: practice },
    phosphorusPercent: { title: 'Phosphor im Trockenfutter', help: practice },
    respiredPercent: { title: 'Als CO₂ veratmeter Kohlenstoff', help: practice },
    releasedPercent: {
      title: 'Stickstoff und Phosphor, die im Wasser bleiben',
      help: 'Der Rest geht über Abschäumer, Algen und Bakterien hinaus (gängige Praxis).',
    },
  },
  filter: {
    title: 'Filter und Bakterien',
    help: 'Was Bakterien mit Stickstoff und Kohlenstoff tun.',
    nitrificationPerH: {
      title: 'Oxidiertes Ammonium',
      help: 'Anteil des Ammoniums, den ein eingefahrener Filter in einer Stunde oxidiert (gängige Praxis).',
    },
    denitrificationPerDay: {
      title: 'Zu Stickstoffgas umgesetztes Nitrat',
      help: 'Anteil des Nitrats an einem Tag; gibt je Mol ein Äquivalent Alkalinität zurück.',
    },
    oxidationPerH: {
      title: 'Oxidiertes Acetat und Formiat',
      help: 'Anteil in einer Stunde; erst dann zählen sie als Alkalinität (gängige Praxis).',
    },
  },
  precipitation: {
    title: 'Ausfällung',
    help: 'Kalk, der von selbst ausfällt: eine Veranschaulichung, keine Vorhersage.',
    mode: {
      title: 'Ausfällung',
      help: 'aus: Nichts fällt aus, was eine Gefahr in voller Länge zeigt; nur über Ω 10; über dem unten gesetzten Ω. Wann Kalk fällt, kann niemand vorhersagen: Minuten bis Tage.',
    },
    law: { title: 'Ratengesetz' },
    aboveOmega: { title: 'Beginnt und endet bei' },
    wettedM2Per100L: {
      title: 'Feste Oberfläche im Wasser',
      help: 'Heizer, Pumpen, Sand, auf denen Kalk wachsen kann (gängige Praxis).',
    },
    crystalM2PerG: {
      title: 'Oberfläche frischer Kristalle',
      help: 'Schwebende Kristalle schaffen beim Wachsen neue Oberfläche: die Kettenreaktion (1–10, aus dem Gedächtnis).',
    },
    seedG: { title: 'Kristalle zu Beginn' },
  },
};

import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  alkalinity: {
    term: 'Alkalinität',
    sentence:
      'Was das Wasser an Säure noch aufnehmen kann; wachsende Korallen verbrauchen sie, und sie ist die Zahl, auf die man achtet.',
  },
  omega: {
    term: 'Ω (Sättigung)',
    sentence:
      'Wie weit über seiner Löslichkeit Aragonit steht: Korallen bauen über 1, und ab etwa 10 kann Kalk von selbst ausfallen.',
  },
  brucite: {
    term: 'Brucit',
    sentence:
      'Magnesiumhydroxid, das aus sehr alkalischem Wasser ausfallen kann; hier ist es weggelassen.',
  },
  carbonates: {
    term: 'Carbonat und Hydrogencarbonat',
    sentence:
      'Die beiden Formen, in denen das Wasser den größten Teil seines Kohlenstoffs und seiner Alkalinität enthält.',
  },
  commonPractice: {
    term: 'Übliche Praxis',
    sentence: 'Was viele Halter tun, ohne gemessene Quelle; jede solche Zahl lässt sich ändern.',
  },
  deadBand: {
    term: 'Schalthysterese',
    sentence: 'Wie weit der Wasserstand fällt, bevor die Nachfüllpumpe anläuft.',
  },
  dic: {
    term: 'DIC',
    sentence:
      'Gelöster anorganischer Kohlenstoff: Kohlendioxid, Hydrogencarbonat und Carbonat zusammen.',
  },
  dkh: {
    term: 'dKH',
    sentence:
      'Deutsche Grade der Karbonathärte: eine Einheit der Alkalinität, von der eine 0,357 Milliäquivalente im Liter sind.',
  },
  doseCard: {
    term: 'Dosierkarte',
    sentence:
      'Eine gedruckte Seite für das Becken: was zu mischen, zu dosieren und zu testen ist, und wann man anhält.',
  },
  drill: {
    term: 'Störfall',
    sentence:
      'Ein auf dem Papier geprobter Ausfall: was ausfällt, wann es gefährlich wird, was verhindert, dass es so weit kommt.',
  },
  dump: { term: 'Leerlaufen', sentence: 'Der ganze Nachfüllbehälter läuft auf einmal ins Becken.' },
  fit: { term: 'Anpassung', sentence: 'Das simulierte Becken, an das Messbuch angeglichen.' },
  forecast: {
    term: 'Vorhersage',
    sentence: 'Was das angepasste Becken als Nächstes tut, und wie weit sie daneben liegen kann.',
  },
  kLa: {
    term: 'kLa',
    sentence:
      'Wie schnell Wasser und Luft Gas austauschen, in Anteilen je Stunde: etwa 0,15 bei ruhiger Oberfläche, 0,5 bei gekräuselter, 1,5 und mehr mit Überlauf und Abschäumer (übliche Praxis).',
  },
  ledger: {
    term: 'Bilanz',
    sentence: 'Woher Alkalinität kam und wohin sie ging, vom Rechenwerk im Gehen gebucht.',
  },
  lesson: {
    term: 'Lektion',
    sentence:
      'Ein geführtes Experiment mit einer Vorhersage, einer Sache zum Verschieben, einer Frage und einem Warum.',
  },
  limewater: {
    term: 'Kalkwasser',
    sentence:
      'In Süßwasser gelöstes Calciumhydroxid: Calcium und Alkalinität zugleich, sehr alkalisch.',
  },
  calciumReactor: {
    term: 'Kalkreaktor',
    sentence:
      'Eine Säule aus Korallenbruch, der sich in Wasser löst, das mit Kohlendioxid angesäuert ist.',
  },
  ph: {
    term: 'pH (NBS)',
    sentence:
      'Wie sauer oder alkalisch das Wasser ist, auf der Skala, auf die übliche Sonden eingestellt werden; eine wirkliche Sonde liegt auf etwa 0,1 genau.',
  },
  photosynthesis: {
    term: 'Photosynthese',
    sentence:
      'Licht nimmt am Tag Kohlendioxid aus dem Wasser, also steigt der pH; nachts kommt es zurück.',
  },
  practicalSalinity: {
    term: 'Praktischer Salzgehalt',
    sentence: 'Das Salz im Wasser, nahe an Gramm im Kilogramm.',
  },
  rankCorrelation: {
    term: 'Rangkorrelation',
    sentence:
      'Zwischen −1 und 1: wie weit die Reihenfolge des einen der Reihenfolge des anderen folgt.',
  },
  reservoir: {
    term: 'Nachfüllbehälter',
    sentence: 'Das Gefäß, aus dem die Nachfüllpumpe schöpft.',
  },
  residual: {
    term: 'Residuum',
    sentence:
      'Wie weit eine Messung von dem liegt, was das angepasste Becken sagt, in Standardabweichungen.',
  },
  saltMix: {
    term: 'Salzmischung',
    sentence:
      'Das trockene Salz für neues Wasser; hier sind es dKH, Calcium und Magnesium bei einem angegebenen Salzgehalt.',
  },
  scenario: {
    term: 'Szenario',
    sentence:
      'Ein Plan als Datei, mit einem Titel, einer Frage und der Antwort, die er geben soll.',
  },
  settledCycle: {
    term: 'Eingeschwungener Tagesgang',
    sentence:
      'Ein Versuch beginnt mit einem Tag, der endet, wie er begann, damit die ersten Tage kein Einlaufen zeigen.',
  },
  standardError: {
    term: 'Standardfehler',
    sentence:
      'Wie weit eine Schätzung wohl daneben liegt; das Doppelte gilt in neunzehn von zwanzig Fällen.',
  },
  sump: {
    term: 'Technikbecken',
    sentence: 'Das Gefäß unter dem Becken; ist es voll, läuft Wasser auf den Boden.',
  },
  tank: {
    term: 'Becken',
    sentence:
      'Ihr wirkliches: Seine Pläne liegen auf der Werkbank, seine Messungen stehen im Messbuch.',
  },
  todaysPlan: {
    term: 'Heutiger Plan',
    sentence:
      'Der Versuch, der für das wirkliche Becken steht, wie es jetzt läuft; das Messbuch wird an ihm gelesen.',
  },
  topOff: {
    term: 'Nachfüllung',
    sentence: 'Ersetzt mit Süßwasser, was verdunstet, durch Niveausensor und Pumpe.',
  },
  trial: { term: 'Versuch', sentence: 'Ein simulierter Lauf eines Plans.' },
  twoPart: {
    term: 'Zwei-Komponenten-Dosierung',
    sentence: 'Eine Carbonat- und eine Calciumlösung, nebeneinander zu gleichen Teilen dosiert.',
  },
  ammonia: {
    term: 'Nicht ionisiertes Ammoniak',
    sentence: 'Der Teil des Ammoniaks, der Fischen schadet; er wächst mit dem pH.',
  },
  verdict: { term: 'Urteil', sentence: 'Was ein Versuch über Ihre Grenzen sagt, in einem Satz.' },
  wash: {
    term: 'Blasse Fläche',
    sentence:
      'Der blasse Streifen in einem Diagramm: Ihre Grenzen, oder wo die meisten möglichen Becken liegen.',
  },
  consumption: {
    term: 'Verbrauch',
    sentence: 'Wie viel Alkalinität die Korallen an einem Tag nehmen, als würde nichts zugegeben.',
  },
  slope: {
    term: 'Steigung',
    sentence:
      'Wie schnell Messwerte steigen oder fallen, nach der Geraden durch sie, Dosen eingeschlossen.',
  },
  giveOrTake: {
    term: '± (plus oder minus)',
    sentence:
      'Zwei Standardfehler nach beiden Seiten: In neunzehn von zwanzig Fällen liegt die Wahrheit darin.',
  },
  limitLine: {
    term: 'Grenze',
    sentence:
      'Ein Wert von Ihnen, den eine Größe nicht überschreiten soll; jede Grenze lässt sich im Plan ändern.',
  },
  ensemble: {
    term: 'Ensemble',
    sentence:
      'Viele Becken, die Ihres sein könnten, jedes ein wenig anders in dem, was niemand genau kennt.',
  },
  quantile: {
    term: 'Quantil',
    sentence: 'Der Wert, unter dem so viele der Becken bleiben: 5 %, die Hälfte oder 95 %.',
  },
};

// One look at a tank as TankView.read takes it, in the same arithmetic: sums over the ions, density,
// constants by a parabola in salinity, pH by Newton in ln h. Numbers on standard input, figures out.
#include <math.h>
#include <stdio.h>
#include <time.h>

enum { K0, K1, K2, KB, KW, KF, KS, KP1, KP2, KP3, KNH4, KSP, FREE, SWS, FH, NBS, CONSTANTS };
enum { MOST_IONS = 64 };
static int ions, dicAt, bAt, so4At, po4At, tanAt, caAt, looks;
static double alkalinityWeight[MOST_IONS], saltWeight[MOST_IONS], amount[MOST_IONS + 1];
static double exact[3][CONSTANTS], k[CONSTANTS];
static double tempC, psuPerMassFraction, fluoridePerPsu, middle, spacing, fco2PerPco2;
static double h, borate, sulfate, fluoride, phosphate, ammonia, rest, restSlope;

static double density(double t90, double s) {
  double t = t90 * 1.00024;
  double pure = 999.842594 + (6.793952e-2 + (-9.09529e-3 + (1.001685e-4 +
                (-1.120083e-6 + 6.536332e-9 * t) * t) * t) * t) * t;
  double a = 0.824493 + (-4.0899e-3 + (7.6438e-5 + (-8.2467e-7 + 5.3875e-9 * t) * t) * t) * t;
  double b = -5.72466e-3 + (1.0227e-4 - 1.6546e-6 * t) * t;
  return pure + (a + b * sqrt(s) + 4.8314e-4 * s) * s;
}

static void setRest(double at) {
  double hydroxide = k[KW] / at, hFree = at / k[FREE];
  double perBorate = 1 / (at + k[KB]), perSulfate = 1 / (hFree + k[KS]), perFluoride = 1 / (at + k[KF]);
  double ofBorate = borate * k[KB] * perBorate, bisulfate = sulfate * hFree * perSulfate;
  double ofFluoride = fluoride * at * perFluoride;
  rest = ofBorate + hydroxide - hFree - bisulfate - ofFluoride;
  restSlope = -ofBorate * at * perBorate - hydroxide - hFree - bisulfate * k[KS] * perSulfate -
              ofFluoride * k[KF] * perFluoride;
  if (ammonia != 0) {
    double perAmmonia = 1 / (at + k[KNH4]), nh3 = ammonia * k[KNH4] * perAmmonia;
    rest += nh3;
    restSlope -= nh3 * at * perAmmonia;
  }
  if (phosphate != 0) {
    double cube = at * at * at, h2po4 = k[KP1] * at * at, hpo4 = k[KP1] * k[KP2] * at;
    double po4 = k[KP1] * k[KP2] * k[KP3], perSum = 1 / (cube + h2po4 + hpo4 + po4);
    double charge = (hpo4 + 2 * po4 - cube) * perSum;
    rest += phosphate * charge;
    restSlope += phosphate * (hpo4 - 3 * cube - charge * (3 * cube + 2 * h2po4 + hpo4)) * perSum;
  }
}

static double findH(double alkalinity, double dic) {
  double k1k2 = k[K1] * k[K2], low = 1e-16, high = 10, at = h;
  for (int i = 0; i < 100; i++) {
    setRest(at);
    double hh = at * at, x = k[K1] * at, scale = 1 / (hh + x + k1k2);
    double slope = -dic * (x * (hh + k1k2) + 4 * k1k2 * hh) * scale * scale;
    double excess = dic * (x + 2 * k1k2) * scale + rest - alkalinity;
    if (excess > 0) low = at; else high = at;
    double step = -excess / (slope + restSlope), size = fabs(step);
    if (size < 4e-7) return at * (1 + step);
    double next = size < 1.5 ? (at * (2 + step)) / (2 - step) : step > 0 ? at * 5 : at * 0.2;
    at = next > low && next < high && i < 40 ? next : sqrt(low * high);
  }
  return NAN;
}

static double look(void) {
  double alkalinity = 0, salt = 0;
  for (int i = 0; i < ions; i++) {
    alkalinity += alkalinityWeight[i] * amount[i];
    salt += saltWeight[i] * amount[i];
  }
  double kg = salt + amount[ions], salinity = (salt / kg) * psuPerMassFraction;
  double litres = 1000 * kg / density(tempC, salinity);
  double x = (salinity - middle) / spacing, a = x * (x - 1) / 2, b = 1 - x * x, c = x * (x + 1) / 2;
  for (int i = 0; i < CONSTANTS; i++) k[i] = a * exact[0][i] + b * exact[1][i] + c * exact[2][i];
  borate = amount[bAt] / kg, sulfate = amount[so4At] / kg, fluoride = fluoridePerPsu * salinity;
  phosphate = amount[po4At] / kg, ammonia = amount[tanAt] / kg;
  double dic = amount[dicAt] / kg;
  h = findH(alkalinity / kg, dic);
  double co2 = dic * h * h / (h * h + k[K1] * (h + k[K2])), hco3 = co2 * k[K1] / h, co3 = hco3 * k[K2] / h;
  double omega = amount[caAt] / kg * co3 / k[KSP], pco2 = co2 * 1e6 / (k[K0] * fco2PerPco2);
  return omega + 1e-9 * pco2 + 1e-9 * litres;
}

static double given(void) {
  double value = NAN;
  if (scanf("%lf", &value) != 1) value = NAN;
  return value;
}

int main(void) {
  ions = (int)given(), dicAt = (int)given(), bAt = (int)given(), so4At = (int)given();
  po4At = (int)given(), tanAt = (int)given(), caAt = (int)given(), looks = (int)given();
  tempC = given(), psuPerMassFraction = given(), fluoridePerPsu = given();
  middle = given(), spacing = given(), fco2PerPco2 = given(), h = given();
  for (int i = 0; i < ions; i++) alkalinityWeight[i] = given();
  for (int i = 0; i < ions; i++) saltWeight[i] = given();
  for (int i = 0; i <= ions; i++) amount[i] = given();
  for (int j = 0; j < 3; j++) for (int i = 0; i < CONSTANTS; i++) exact[j][i] = given();
  double carbon = amount[dicAt], sum = 0;
  clock_t begun = clock();
  for (int i = 0; i < looks; i++) {
    amount[dicAt] = carbon * (1 + 1e-4 * sin(i));
    sum += look();
  }
  printf("%.3f %.12g\n", (double)(clock() - begun) / CLOCKS_PER_SEC * 1e9 / looks, sum);
  return 0;
}

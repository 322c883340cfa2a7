export interface Reference {
  text: string;
  /** Only where it is certain. */
  doi?: string;
}

/** Citation key → published source. A formula names its key beside the formula. */
export const references = {
  bates1956: {
    text: 'Bates, Bower & Smith 1956. Calcium hydroxide as a highly alkaline pH standard. J. Res. Natl. Bur. Stand. 56, 305–312',
    doi: '10.6028/jres.056.040',
  },
  cleggWhitfield1995: {
    text: 'Clegg & Whitfield 1995. A chemical model of seawater including dissolved ammonia and the stoichiometric dissociation constant of ammonia in estuarine water and seawater from −2 to 40 °C. Geochim. Cosmochim. Acta 59, 2403–2421',
    doi: '10.1016/0016-7037(95)00135-2',
  },
  dickson1990borate: {
    text: 'Dickson 1990. Thermodynamics of the dissociation of boric acid in synthetic seawater from 273.15 to 318.15 K. Deep-Sea Res. A 37, 755–766',
    doi: '10.1016/0198-0149(90)90004-F',
  },
  dickson1990sulfate: {
    text: 'Dickson 1990. Standard potential of the reaction AgCl(s) + ½H2(g) = Ag(s) + HCl(aq), and the standard acidity constant of the ion HSO4− in synthetic sea water from 273.15 to 318.15 K. J. Chem. Thermodyn. 22, 113–127',
    doi: '10.1016/0021-9614(90)90074-Z',
  },
  dickson2007: {
    text: 'Dickson, Sabine & Christian (eds) 2007. Guide to best practices for ocean CO2 measurements. PICES Special Publication 3',
  },
  humphreys2022: {
    text: 'Humphreys, Lewis, Sharp & Pierrot 2022. PyCO2SYS v1.8: marine carbonate system calculations in Python. Geosci. Model Dev. 15, 15–43',
    doi: '10.5194/gmd-15-15-2022',
  },
  lee2010: {
    text: 'Lee, Kim, Byrne, Millero, Feely & Liu 2010. The universal ratio of boron to chlorinity for the North Pacific and North Atlantic oceans. Geochim. Cosmochim. Acta 74, 1801–1811',
    doi: '10.1016/j.gca.2009.12.027',
  },
  lueker2000: {
    text: 'Lueker, Dickson & Keeling 2000. Ocean pCO2 calculated from dissolved inorganic carbon, alkalinity, and equations for K1 and K2. Mar. Chem. 70, 105–119',
    doi: '10.1016/S0304-4203(00)00022-0',
  },
  millero1995: {
    text: 'Millero 1995. Thermodynamics of the carbon dioxide system in the oceans. Geochim. Cosmochim. Acta 59, 661–677',
    doi: '10.1016/0016-7037(94)00354-O',
  },
  milleroPoisson1981: {
    text: 'Millero & Poisson 1981. International one-atmosphere equation of state of seawater. Deep-Sea Res. A 28, 625–629',
    doi: '10.1016/0198-0149(81)90122-9',
  },
  morrisRiley1966: {
    text: 'Morris & Riley 1966. The bromide/chlorinity and sulphate/chlorinity ratio in sea water. Deep-Sea Res. 13, 699–705',
    doi: '10.1016/0011-7471(66)90601-2',
  },
  mucci1983: {
    text: 'Mucci 1983. The solubility of calcite and aragonite in seawater at various salinities, temperatures, and one atmosphere total pressure. Am. J. Sci. 283, 780–799',
    doi: '10.2475/ajs.283.7.780',
  },
  orr2018: {
    text: 'Orr, Epitalon, Dickson & Gattuso 2018. Routine uncertainty propagation for the marine carbon dioxide system. Mar. Chem. 207, 84–107',
    doi: '10.1016/j.marchem.2018.10.006',
  },
  perezFraga1987: {
    text: 'Perez & Fraga 1987. Association constant of fluoride and hydrogen ions in seawater. Mar. Chem. 21, 161–168',
    doi: '10.1016/0304-4203(87)90036-3',
  },
  phreeqc3: {
    text: 'Parkhurst & Appelo 2013. Description of input and examples for PHREEQC version 3. U.S. Geological Survey Techniques and Methods 6-A43',
  },
  prestonThomas1990: {
    text: 'Preston-Thomas 1990. The International Temperature Scale of 1990 (ITS-90). Metrologia 27, 3–10',
    doi: '10.1088/0026-1394/27/1/002',
  },
  riley1965: {
    text: 'Riley 1965. The occurrence of anomalously high fluoride concentrations in the North Atlantic. Deep-Sea Res. 12, 219–220',
  },
  rileyTongudai1967: {
    text: 'Riley & Tongudai 1967. The major cation/chlorinity ratios in sea water. Chem. Geol. 2, 263–269',
    doi: '10.1016/0009-2541(67)90026-5',
  },
  takahashi1982: {
    text: 'Takahashi, Williams & Bos 1982. Carbonate chemistry. In: GEOSECS Pacific Expedition, vol. 3, Hydrographic Data 1973–1974, 77–83',
  },
  thermoddem2012: {
    text: 'Blanc et al. 2012. Thermoddem: a geochemical database focused on low temperature water/rock interactions and waste materials. Appl. Geochem. 27, 2107–2116',
    doi: '10.1016/j.apgeochem.2012.06.002',
  },
  unesco1983: {
    text: 'Fofonoff & Millard 1983. Algorithms for computation of fundamental properties of seawater. UNESCO Technical Papers in Marine Science 44',
  },
  uppstrom1974: {
    text: 'Uppström 1974. The boron/chlorinity ratio of deep-sea water from the Pacific Ocean. Deep-Sea Res. 21, 161–162',
    doi: '10.1016/0011-7471(74)90074-6',
  },
  garciaGordon1992: {
    text: 'Garcia & Gordon 1992. Oxygen solubility in seawater: better fitting equations. Limnol. Oceanogr. 37, 1307–1312 (the fit to Benson & Krause 1984, as in published code)',
    doi: '10.4319/lo.1992.37.6.1307',
  },
  wanninkhof2014: {
    text: 'Wanninkhof 2014. Relationship between wind speed and gas exchange over the ocean revisited. Limnol. Oceanogr. Methods 12, 351–362',
    doi: '10.4319/lom.2014.12.351',
  },
  weiss1974: {
    text: 'Weiss 1974. Carbon dioxide in water and seawater: the solubility of a non-ideal gas. Mar. Chem. 2, 203–215',
    doi: '10.1016/0304-4203(74)90015-2',
  },
  weissPrice1980: {
    text: 'Weiss & Price 1980. Nitrous oxide solubility in water and seawater. Mar. Chem. 8, 347–359',
    doi: '10.1016/0304-4203(80)90024-9',
  },
  wieser2006: {
    text: 'Wieser 2006. Atomic weights of the elements 2005 (IUPAC Technical Report). Pure Appl. Chem. 78, 2051–2066',
    doi: '10.1351/pac200678112051',
  },
  wolfGladrow2007: {
    text: 'Wolf-Gladrow, Zeebe, Klaas, Körtzinger & Dickson 2007. Total alkalinity: the explicit conservative expression and its application to biogeochemical processes. Mar. Chem. 106, 287–300',
    doi: '10.1016/j.marchem.2007.01.006',
  },
  yaoMillero1995: {
    text: 'Yao & Millero 1995. The chemistry of the anoxic waters in the Framvaren Fjord, Norway. Aquat. Geochem. 1, 53–88',
    doi: '10.1007/BF01025231',
  },
  langdonAtkinson2005: {
    text: 'Langdon & Atkinson 2005. Effect of elevated pCO2 on photosynthesis and calcification of corals and interactions with seasonal change in temperature/irradiance and nutrient enrichment. J. Geophys. Res. 110, C09S07 (slopes from memory)',
    doi: '10.1029/2004JC002576',
  },
  chanConnolly2013: {
    text: 'Chan & Connolly 2013. Sensitivity of coral calcification to ocean acidification: a meta-analysis. Glob. Change Biol. 19, 282–290 (15 % for each unit of Ω, from memory)',
    doi: '10.1111/gcb.12011',
  },
  gattuso1999: {
    text: 'Gattuso, Allemand & Frankignoulle 1999. Photosynthesis and calcification at cellular, organismal and community levels in coral reefs. Am. Zool. 39, 160–183 (light to dark ratio about 3, from memory)',
    doi: '10.1093/icb/39.1.160',
  },
  millero2008: {
    text: 'Millero, Feistel, Wright & McDougall 2008. The composition of Standard Seawater and the definition of the Reference-Composition Salinity Scale. Deep-Sea Res. I 55, 50–72 (table 4 from memory)',
    doi: '10.1016/j.dsr.2007.10.001',
  },
  hairerNorsettWanner1993: {
    text: 'Hairer, Nørsett & Wanner 1993. Solving Ordinary Differential Equations I, 2nd ed., Springer, section II.13: methods that use how the rates change (from memory)',
  },
  broyden1965: {
    text: 'Broyden 1965. A class of methods for solving nonlinear simultaneous equations. Math. Comp. 19, 577–593 (from memory)',
    doi: '10.1090/S0025-5718-1965-0198670-6',
  },
  burtonWalter1987: {
    text: 'Burton & Walter 1987. Relative precipitation rates of aragonite and Mg calcite from seawater: temperature or carbonate ion control? Geology 15, 111–114 (read as fitted in temperature by published code)',
  },
  zhongMucci1989: {
    text: 'Zhong & Mucci 1989. Calcite and aragonite precipitation from seawater solutions of various salinities: precipitation rates and overgrowth compositions. Chem. Geol. 78, 283–299 (read as k and n in published code)',
  },
  moras2022: {
    text: 'Moras, Bach, Cyronak, Joannes-Boyau & Schulz 2022. Ocean alkalinity enhancement – avoiding runaway CaCO3 precipitation during quick and hydrated lime dissolution. Biogeosciences 19, 3537–3557 (abstract)',
    doi: '10.5194/bg-19-3537-2022',
  },
  ringham2024: {
    text: 'Ringham et al. 2024. An assessment of ocean alkalinity enhancement using aqueous hydroxides: kinetics, efficiency, and precipitation thresholds. Biogeosciences 21, 3551–3570 (abstract)',
    doi: '10.5194/bg-21-3551-2024',
  },
  hooverBerkshire1969: {
    text: 'Hoover & Berkshire 1969. Effects of hydration on carbon dioxide exchange across an air–water interface. J. Geophys. Res. 74, 456–464 (formula as in published code)',
    doi: '10.1029/JB074i002p00456',
  },
  johnson1982: {
    text: 'Johnson 1982. Carbon dioxide hydration and dehydration kinetics in seawater. Limnol. Oceanogr. 27, 849–855 (rates as in published code)',
    doi: '10.4319/lo.1982.27.5.0849',
  },
  jahne1987: {
    text: 'Jähne, Heinz & Dietrich 1987. Measurement of the diffusion coefficients of sparingly soluble gases in water. J. Geophys. Res. 92, 10767–10776 (fit as in published code)',
    doi: '10.1029/JC092iC10p10767',
  },
  hylandWexler1983: {
    text: 'Hyland & Wexler 1983. Formulations for the thermodynamic properties of the saturated phases of H2O from 173.15 K to 473.15 K. ASHRAE Trans. 89(2A), 500–519 (coefficients from memory)',
  },
  shah2014: {
    text: 'Shah 2014. Methods for calculation of evaporation from swimming pools and other water surfaces. ASHRAE Trans. 120(2), 3–17 (formula from memory, values read)',
  },
  commonPractice: { text: 'Common practice: no source; change it to what you know' },
} as const satisfies Record<string, Reference>;

export type ReferenceKey = keyof typeof references;

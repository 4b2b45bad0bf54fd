import type { Column } from '../catalogue/thing.ts';
import { listed } from './listed.ts';
import type { MatterName } from './private-matters.ts';

/** Words that point to private matter. */
export interface PrivateWord {
  matter: MatterName;
  /** Whole words in lower case; a blank stands for a hyphen too. */
  words: readonly string[];
  /** In which columns they count; in the kind, the title, the description and the note where it is left out. */
  columns?: readonly PrivateColumn[];
  /** Words that make them harmless, beside them with two words between at most. */
  unless?: readonly string[];
  /** Whether they are on people whom the row does not name: the pupils of a register. */
  ofOthers?: true;
  source: string;
}

export type PrivateColumn = Extract<Column, 'kind' | 'title' | 'description' | 'note'>;

const P = 'common practice';
const M = 'from memory';

// Single words that mean other things too ("bank", "operation", "will", "school") stand here only with what makes them
// plain, or in the kind column.

/** Words for private matter. Extend them a row at a time; the order does not matter. */
export const PRIVATE_WORDS: readonly PrivateWord[] = [
  {
    matter: 'health',
    words: listed(
      'medical record, medical records, medical report, medical history, medical certificate, medical file',
      'medical examination, health record, health records, hospital record, hospital records, hospital report',
      'hospital notes, hospital bill, hospital bills, hospital discharge, diagnosis, prescription',
      "prescriptions, x ray, x rays, doctor's letter, doctor's letters, doctor's report, doctor's bill",
      'blood test, psychiatric, psychiatrist, psychologist, mental illness, mental hospital, mental health',
      'nervous breakdown, asylum, chemotherapy, cancer, dementia, epilepsy, hiv, miscarriage, abortion, sterilised',
      'sterilized, suicide, alcoholism, rehab, vaccination card, vaccination record, therapy notes, counselling notes',
      'med records, med record, med report, hosp records, hosp record, hosp letter, psych report, dr letter',
      'alcoholics anonymous, narcotics anonymous, al anon, aa meeting, aa meetings, aa sponsor, sobriety',
      'her operation, his operation, surgery, letter from the hospital, her illness, his illness, disability claim',
    ),
    unless: listed(
      'ferry, cable, plant, machinery, boat, works, mill, seekers, tropic, crab, cow, heifer, dog, horse, tree, trees, motor, motoring, automobile',
    ),
    source: P,
  },
  {
    matter: 'health',
    words: ['medical', 'medical paper', 'medical papers', 'medical letter', 'health', 'hospital', 'x ray'],
    columns: ['kind'],
    source: P,
  },
  {
    matter: 'health',
    words: listed(
      'krankenakte, arztbrief, arztbericht, befund, rezept vom arzt, impfpass, dossier médical, carnet de santé',
      'ordonnance médicale, historia clínica, informe médico, cartella clinica, referto medico, sykejournal',
      'legeerklæring, pasientjournal, epikrise, sjukjournal, läkarintyg, journalutskrift, lægeattest',
      'patientjournal, medisch dossier, doktersverklaring',
    ),
    source: M,
  },
  {
    matter: 'adoption',
    words: listed(
      'adoption, adoptions, adoptive parents, adopted child, adopted son, adopted daughter, was adopted, adoption paper, adoption papers, foster child, foster care',
      'foster papers, birth mother, birth father, paternity, illegitimate, natural father, born out of wedlock',
      'adoptie, pleegkind, adozione, adopción, adopsjon, fosterbarn, fosterhem, pflegekind, vaterschaft',
    ),
    unless: listed(
      'dog, cat, heifer, resolution, bill, motion, minutes, rules, plan, name, constitution, proposal',
    ),
    source: P,
  },
  {
    matter: 'identity',
    words: listed(
      'passport, passports, identity card, identity cards, identity papers, social security card, driving licence',
      "driver's license, drivers license, driver's licence, birth certificate, birth certificates",
      'residence permit, naturalisation papers, naturalization papers, reisepass, personalausweis, geburtsurkunde',
      'birth cert, birth certs, id card, id cards, national insurance card, driving license, drivers licence',
      "passeport, carte d'identité, acte de naissance, pasaporte, passaporto, fødselsattest, paspoort",
    ),
    source: P,
  },
  {
    matter: 'password',
    words: listed(
      'password, passwords, passcode, pin number, pin code, log in details, login details, security answers, passwort, kennwort, mot de passe',
    ),
    source: P,
  },
  {
    matter: 'legal',
    words: listed(
      'divorce, divorced, divorce papers, decree nisi, legal separation, child custody, custody papers, custody of the children',
      'custody hearing, court case, court order, court papers, court summons, lawsuit, criminal conviction',
      'prison, probation, parole, police record, police report, arrest, arrested, restraining order, guardianship',
      'power of attorney, bankruptcy, last will, will and testament, probate, prenuptial',
      'abuse, abused, sexual abuse, child abuse, domestic violence, sexual assault, rape, molested',
      'victim statement, witness statement, statement to the police, divorce cert, decree absolute, div papers',
      'scheidung, scheidungsurteil, gerichtsurteil, jugement de divorce, divorcio, divorzio, skilsmisse',
      'skilsmässa, echtscheiding',
    ),
    unless: listed(
      'story, novel, play, film, ferry, company, camp, boat, bridge, cable, rope, term, terms, shouted, shouting, passengers, seed, oilseed, field, oil',
    ),
    source: P,
  },
  {
    matter: 'legal',
    words: listed('will, wills, testament, court paper, court papers'),
    columns: ['kind'],
    source: P,
  },
  {
    matter: 'bank',
    words: listed(
      'bank book, bank books, bankbook, bank statement, bank statements, bank account, passbook, savings book, savings account',
      'bank stmt, bank stmts, acct number, account no, acct no, acct, p60, p45, sort code',
      'cheque book, cheque books, cheque stubs, checkbook, check stubs, cancelled checks, credit card, account number',
      'tax return, tax returns, income tax, tax papers, tax records, tax assessment, pay slip, pay slips, payslip, payslips, pay stub, pay stubs',
      'wage slip, wage slips, pension papers, pension book, mortgage, personal loan, life insurance',
      'kontoauszug, kontoauszüge, sparbuch, steuererklärung, steuerbescheid, gehaltsabrechnung, relevé bancaire',
      "relevés bancaires, livret d'épargne, avis d'imposition, bulletin de paie, extracto bancario, libreta de ahorros",
      'estratto conto, libretto di risparmio, bankbok, kontoutskrift, selvangivelse, sparekassebok, lønnsslipp',
      'självdeklaration, lönebesked, bankbog, bankafschrift, spaarbankboekje, belastingaangifte',
    ),
    unless: listed('company, ferry, county, club, church, chapel, school, boat, building, dredger'),
    source: P,
  },
  {
    matter: 'school',
    words: listed(
      'school report, school reports, report card, report cards, school record, school records, school file',
      'high school transcript, college transcript, exam results, examination results, academic record, academic transcript, expelled, truancy',
      'schulzeugnis, schulzeugnisse, zeugnis, zeugnisse, zeugnisheft, bulletin scolaire, bulletins scolaires',
      'carnet de notes, boletín de notas, pagella, pagelle, karakterbok, karakterkort, vitnemål, skolebetyg',
      'skolbetyg, terminsbetyg, schoolrapport, rapportboekje, świadectwo szkolne',
    ),
    source: P,
  },
  {
    matter: 'school',
    words: listed(
      'school register, class register, register of pupils, class list, class lists, pupil records, mark book',
    ),
    ofOthers: true,
    source: P,
  },
  {
    matter: 'health',
    words: listed(
      'patient records, patient list, patient register, case notes, register of patients, midwife register',
    ),
    ofOthers: true,
    source: P,
  },
];

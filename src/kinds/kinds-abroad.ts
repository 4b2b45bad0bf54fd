/** Words of other languages for a kind of material. */
interface KindAbroad {
  /** The unit for one of them in `KINDS`. */
  kind: string;
  /** For one of them, and for several, in lower case. */
  one: readonly string[];
  many: readonly string[];
}

const row = (kind: string, one: string, many: string): KindAbroad => ({
  kind,
  one: one.split(', '),
  many: many.split(', '),
});

/**
 * The commonest words for kinds of material in German, French, Spanish, Italian, Dutch, Norwegian, Danish and Swedish
 * (common practice, from memory). They are looked for in the column of kinds only: in an English title, `brief` is no
 * letter. A word that means one thing here and another there stands nowhere: `carta` is a letter in Spanish and paper in
 * Italian, `carte` a map and a card in French.
 */
export const KINDS_ABROAD: readonly KindAbroad[] = [
  row(
    'family tree',
    'stammbaum, arbre généalogique, árbol genealógico, albero genealogico, stamboom, slektstre, stamtavle, släktträd',
    'stammbäume',
  ),
  row('letter', 'brief, lettre, lettera, brev', 'briefe, lettres, lettere, brieven, cartas'),
  row(
    'postcard',
    'postkarte, ansichtskarte, carte postale, tarjeta postal, cartolina, ansichtkaart, briefkaart, prentbriefkaart, postkort, brevkort, vykort',
    'postkarten, ansichtskarten, cartes postales, tarjetas postales, cartoline, ansichtkaarten',
  ),
  row(
    'greeting card',
    'glückwunschkarte, grußkarte, carte de vœux, wenskaart, hilsekort, gratulationskort',
    'glückwunschkarten, grußkarten, cartes de vœux, wenskaarten',
  ),
  row(
    'telegram',
    'telegramm, télégramme, telegrama, telegramma',
    'telegramme, télégrammes, telegramas, telegrammi, telegrammen, telegrammer',
  ),
  row(
    'diary',
    'tagebuch, journal intime, diario, dagboek, dagbok, dagbog',
    'tagebücher, journaux intimes, diarios, diari, dagboeken, dagbøker, dagbøger, dagböcker',
  ),
  row(
    'notebook',
    'heft, notizbuch, cahier, carnet, cuaderno, libreta, quaderno, taccuino, schrift, notatbok, notesbog, anteckningsbok',
    'hefte, notizbücher, cahiers, carnets, cuadernos, quaderni, taccuini, schriften, notatbøker',
  ),
  row(
    'manuscript',
    'manuskript, handschrift, manuscrit, manuscrito, manoscritto',
    'manuskripte, manuscrits, manuscritos, manoscritti, manuscripten, manuskripter',
  ),
  row(
    'certificate',
    'urkunde, zeugnis, certificat, certificado, certificato, oorkonde, attest, intyg',
    'urkunden, zeugnisse, certificats, certificados, certificati, oorkonden, attester',
  ),
  row(
    'deed',
    'kaufvertrag, acte notarié, escritura, rogito, akte, skjøte, skøde, köpebrev',
    'kaufverträge, actes notariés, escrituras, rogiti, akten, skjøter, skøder',
  ),
  row('will', 'testamento', 'testamente, testamentos, testamenti, testamenten, testamenter'),
  row(
    'passport',
    'reisepass, passeport, pasaporte, passaporto, paspoort, pass',
    'reisepässe, passeports, pasaportes, passaporti, paspoorten',
  ),
  row(
    'account book',
    'kontobuch, haushaltsbuch, livre de comptes, libro de cuentas, libro dei conti, kasboek, regnskapsbok, regnskabsbog, kassabok',
    'kontobücher, livres de comptes, libros de cuentas, libri dei conti, kasboeken, regnskapsbøker',
  ),
  row(
    'receipt',
    'quittung, rechnung, reçu, facture, recibo, factura, ricevuta, fattura, kwitantie, rekening, kvittering, regning, kvitto, räkning',
    'quittungen, rechnungen, reçus, factures, recibos, facturas, ricevute, fatture, kwitanties, rekeningen, kvitteringer, regninger, kvitton, räkningar',
  ),
  row(
    'recipe',
    'rezept, recette, receta, ricetta, recept, oppskrift, opskrift',
    'rezepte, recettes, recetas, ricette, recepten, oppskrifter, opskrifter',
  ),
  row(
    'press cutting',
    'zeitungsausschnitt, coupure de presse, recorte de prensa, ritaglio di giornale, krantenknipsel, avisutklipp, avisudklip, tidningsurklipp',
    'zeitungsausschnitte, coupures de presse, recortes de prensa, ritagli di giornale, krantenknipsels',
  ),
  row(
    'newspaper',
    'zeitung, periódico, giornale, krant, avis, tidning',
    'zeitungen, periódicos, giornali, kranten, aviser, tidningar',
  ),
  row(
    'book',
    'buch, livre, libro, boek, bok, bog',
    'bücher, livres, libros, libri, boeken, bøker, bøger, böcker',
  ),
  row(
    'map',
    'landkarte, karte, mapa, mappa, landkaart, kart',
    'landkarten, karten, cartes géographiques, mapas, mappe, landkaarten',
  ),
  row(
    'drawing',
    'zeichnung, dessin, dibujo, disegno, tekening, tegning, teckning',
    'zeichnungen, dessins, dibujos, disegni, tekeningen, tegninger, teckningar',
  ),
  row(
    'painting',
    'gemälde, tableau, pintura, cuadro, dipinto, quadro, schilderij, maleri, målning',
    'tableaux, pinturas, cuadros, dipinti, quadri, schilderijen, malerier, målningar',
  ),
  row(
    'sheet of music',
    'notenblatt, partition, partitura, spartito, bladmuziek, notehefte, nodehæfte, nothäfte',
    'noten, partitions, partituras, spartiti, noter',
  ),
  row(
    'photograph',
    'foto, fotografie, lichtbild, photographie, fotografía, fotografi, bilde, billede',
    'fotos, fotografien, photographies, fotografías, foto’s, bilder, billeder, fotografier',
  ),
  row(
    'photograph album',
    'fotoalbum, album photo, álbum de fotos, álbum, album di fotografie',
    'fotoalben, albums photo, álbumes de fotos, álbumes, fotoalbums',
  ),
  row(
    'negative',
    'negativ, négatif, negativo, negatief',
    'négatifs, negativos, negativi, negatieven, negativer',
  ),
  row(
    'slide',
    'dia, diapositive, diapositiva, lysbilde',
    'dias, diapositives, diapositivas, dia’s, lysbilder',
  ),
];

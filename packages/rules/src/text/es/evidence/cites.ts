/** How a source was read, as the register writes it behind a citation. */
const REMARKS: [english: string, spanish: string][] = [
  [
    "Common practice of the trade; no published source is claimed.",
    "Práctica común del oficio; no se afirma ninguna fuente publicada.",
  ],
  ["Recalled, not re-read.", "Recordado, no leído de nuevo."],
  ["Abstract.", "Resumen."],
  ["Abstract read.", "Se leyó el resumen."],
  ["Read in part.", "Leído en parte."],
  ["Quoted elsewhere.", "Citado en otra parte."],
  ["From memory.", "De memoria."],
];

/** A source is cited as it is printed; how it was read is said in Spanish. */
export function citeWords(cite: string): string {
  return REMARKS.reduce((text, [english, spanish]) => text.replaceAll(english, spanish), cite);
}

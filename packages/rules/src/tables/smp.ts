/**
 * Lime by the SMP single buffer, short tons per acre of lime of full effect in an 8-inch layer of mineral soil, for
 * target pH 7.0, 6.5 and 6.0.
 *
 * Source: Shoemaker, McLean and Pratt 1961, table as in the North Central Region methods (SN-608). From memory; agrees
 * with the Tri-State equations (SN-609, also from memory) within 0.1.
 */
export const SMP_ROWS: readonly { bufferPh: number; tonsPerAcre: readonly [number, number, number] }[] = [
  { bufferPh: 5.0, tonsPerAcre: [20.0, 16.9, 13.7] },
  { bufferPh: 5.1, tonsPerAcre: [19.0, 16.0, 13.0] },
  { bufferPh: 5.2, tonsPerAcre: [17.9, 15.1, 12.3] },
  { bufferPh: 5.3, tonsPerAcre: [16.9, 14.2, 11.6] },
  { bufferPh: 5.4, tonsPerAcre: [15.8, 13.4, 10.9] },
  { bufferPh: 5.5, tonsPerAcre: [14.8, 12.5, 10.2] },
  { bufferPh: 5.6, tonsPerAcre: [13.7, 11.6, 9.4] },
  { bufferPh: 5.7, tonsPerAcre: [12.7, 10.7, 8.7] },
  { bufferPh: 5.8, tonsPerAcre: [11.7, 9.8, 8.0] },
  { bufferPh: 5.9, tonsPerAcre: [10.6, 9.0, 7.3] },
  { bufferPh: 6.0, tonsPerAcre: [9.6, 8.1, 6.6] },
  { bufferPh: 6.1, tonsPerAcre: [8.6, 7.2, 5.9] },
  { bufferPh: 6.2, tonsPerAcre: [7.5, 6.4, 5.2] },
  { bufferPh: 6.3, tonsPerAcre: [6.5, 5.5, 4.5] },
  { bufferPh: 6.4, tonsPerAcre: [5.5, 4.7, 3.8] },
  { bufferPh: 6.5, tonsPerAcre: [4.5, 3.8, 3.1] },
  { bufferPh: 6.6, tonsPerAcre: [3.4, 2.9, 2.4] },
  { bufferPh: 6.7, tonsPerAcre: [2.4, 2.1, 1.7] },
  { bufferPh: 6.8, tonsPerAcre: [1.4, 1.2, 1.0] },
];

/** Where the dashboard hands photographs on, for agent and farmer alike. */
export const photoAddress = (farmId: string, photoId: string): string => `/farms/${farmId}/photos/${photoId}`;
export const photosAddress = (farmId: string, signId: string): string =>
  `/farms/${farmId}/signs/${signId}/photos`;

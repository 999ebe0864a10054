import type { Place } from '../../contract/records.ts';

export const placeNames: Record<Place, string> = {
  'GB-ENG': 'England',
  'GB-SCT': 'Scotland',
  'GB-WLS': 'Wales',
  'GB-NIR': 'Northern Ireland',
  EU: 'European Union',
  US: 'United States',
};

/** Suggested when a place is chosen; both can be changed. */
export function suggested(
  place: Place,
  deviceZone: string,
): { zone: string; currency: string; units: 'metric' | 'US' } {
  if (place === 'US')
    return {
      zone: deviceZone.startsWith('America/') ? deviceZone : 'America/New_York',
      currency: 'USD',
      units: 'US',
    };
  if (place === 'EU')
    return {
      zone: deviceZone.startsWith('Europe/') ? deviceZone : 'Europe/Dublin',
      currency: 'EUR',
      units: 'metric',
    };
  return { zone: 'Europe/London', currency: 'GBP', units: 'metric' };
}

/** What is said with every answer about chilling. */
import type { Machine, MostPieces } from '../core/method/chill-load.ts';
import type { Chilled } from '../core/method/chilling.ts';

/** The cautions for a computed chill, the ones that this one calls for first. */
export function chillCautions(drawn: Chilled, machine?: Machine, most?: MostPieces): string[] {
  const cautions: string[] = [];
  if (!drawn.meets)
    cautions.push(
      'As drawn this piece does not cool as the rules ask, even alone. Make it smaller, cut it, or use a colder or faster medium.',
    );
  if (most?.pieces === 0)
    cautions.push(
      'Not even one piece meets the rules in this machine or bath: nothing may be chilled in it so.',
    );
  if (machine !== undefined)
    cautions.push(
      'Nothing here knows how many have room. Air or water must pass all round every piece: pieces that touch count as one larger piece, covered trays cool far slower.',
    );
  if (machine?.kind === 'power')
    cautions.push(
      'A machine gives its power when it is clean, cold and shut. Hot trays and every opening of the door take part of it: load fewer until you have measured.',
    );
  if (machine?.kind === 'ice')
    cautions.push(
      'The room melts ice as well: take more than is reckoned, stir, and add ice before the last of it has gone. Only wrapped food goes into a shared bath.',
    );
  return [
    ...cautions,
    'The largest size and the most pieces are at the very limit, with nothing in hand. Coefficient, conductivity and shape may each be a tenth off and more: stay well below until a probe has shown how your kitchen does. Rolled joints of 110 mm that were measured in ice water took a sixth to two fifths longer than computed here.',
    'A prediction is no measurement: probe the warmest place of the largest piece, the one that stands worst, with a thermometer you have checked, and write down when.',
    'Advice, not a licence: your local authority and a qualified person decide for your kitchen.',
  ];
}

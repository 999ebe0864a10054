/** What a stage asks of its medium beside a temperature, in the words of a kitchen: vapour, pressure, radiation, ladled fat. */
import type { StageInput } from '../contract/body.ts';

const plain = (x: number) => String(Number(x.toPrecision(4)));

/** `40 % humidity`, `dew point 50 °C`, `at 1500 m`, `fat of 180 °C ladled 4 s in every 10 s`; empty where the temperature says it all. */
export function surroundingsInWords(stage: StageInput, temperature: (C: number) => string): string[] {
  const { humidityPct, dewPointC, wetBulbC, altitudeM, pressureKPa, brineSaltPct, fluxWm2, radiantC, ladle } =
    stage;
  const words: string[] = [];
  const say = (value: number | undefined, phrase: (value: number) => string) => {
    if (value !== undefined) words.push(phrase(value));
  };
  say(humidityPct, (x) => `${plain(x)} % humidity`);
  say(dewPointC, (x) => `dew point ${temperature(x)}`);
  say(wetBulbC, (x) => `wet bulb ${temperature(x)}`);
  say(brineSaltPct, (x) => `${plain(x)} % salt`);
  say(altitudeM, (x) => `at ${plain(x)} m above the sea`);
  say(pressureKPa, (x) => `under ${plain(x)} kPa`);
  say(fluxWm2, (x) => `${plain(x / 1000)} kW/m² of radiant heat`);
  say(radiantC, (x) => `a source at ${temperature(x)}`);
  if (ladle !== undefined)
    words.push(
      `fat of ${temperature(ladle.fatC)} ladled ${plain(ladle.onS)} s in every ${plain(ladle.everyS)} s`,
    );
  for (const { of, thicknessMm, layers } of stage.wraps ?? [])
    words.push(`in ${layers === undefined ? '' : `${layers} × `}${plain(thicknessMm)} mm of ${of}`);
  if (stage.wrapped === true) words.push('wrapped');
  return words;
}

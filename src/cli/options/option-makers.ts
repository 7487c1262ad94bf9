import { Option } from 'commander';
import { numberBetween, wholeNumber } from './values.js';

/** An option whose value is taken as it is, or that is a switch. */
export function option(flags: string, text: string): Option {
  return new Option(flags, text);
}

/** An option whose value is a whole number within bounds. */
export function whole(flags: string, text: string, least: number, most: number): Option {
  return option(flags, text).argParser(wholeNumber(longName(flags), least, most));
}

/** An option whose value is a plain number within bounds. */
export function decimal(flags: string, text: string, least: number, most: number): Option {
  return option(flags, text).argParser(numberBetween(longName(flags), least, most));
}

/** The same option without a value of its own; help tells in words what holds without it. */
export function shown(given: Option, text: string): Option {
  return given.default(undefined, text);
}

function longName(flags: string): string {
  return /--[a-z-]+/.exec(flags)![0];
}

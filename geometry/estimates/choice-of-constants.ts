/** How the constants of each model were chosen, for whoever reads an estimate. No plan was used to choose any. */
import type { Topic } from './assumption';

export const choiceOfConstants: Readonly<Record<Exclude<Topic, 'brief'>, string>> = {
  power:
    'Ratings come off the sheets; where a sheet is silent, processors follow the supply design guide’s table of currents by class, and cards the limits of their connectors. Shares of load are what machines of this class draw at the wall, from memory. None was fitted to a plan.',
  air: 'Coefficients of openings are the published ones for sharp edges (0.6 to 0.65); open shares and pressure drops come from sheets of perforated plate, fins and cores, from memory. None was fitted to a plan.',
  heat: 'Each resistance comes from its own physics or from sheets, from memory: dies grow with their class, so the rise from lid to die at the power of the class is one number for all (0.24 K/W at 105 W); a cooler’s rating is read as the heat at which its foot stands 34 K over its air, which gives big towers the 0.12 to 0.18 K/W they are known for. None was fitted to a plan. Builders’ practice puts a six-core 105 W class processor under a twin tower in the high 70s °C in games; these constants give a middle some degrees lower, with that inside the band, and were left so.',
  sound:
    'Fans follow the published law of speed (50 to 60 dB a decade); levels of what states none come from sheets, from memory. Panels, room and starved fans are common practice, no source. None was fitted to a plan.',
  mass: 'Parts weigh what their sheets say, else what their kind usually weighs for its size, from memory; stiffnesses are those of the materials. None was fitted to a plan.',
  money: 'Nothing is assumed: every amount was typed by a person.',
};

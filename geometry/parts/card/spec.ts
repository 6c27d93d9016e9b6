/**
 * Spec of an expansion card.
 *
 * Frame: x from the bracket towards the far end, origin on the card-side face of the bracket plate; z from the
 * contact fingers upwards (away from the board), origin at the finger tips; y from the component side to the solder
 * side, origin at the mid-plane of the card's circuit board, so the fans of a graphics card face -y. Millimetres.
 */
import { z } from 'zod';
import { refuse } from '../contradiction';
import { millimetres, position, rating } from '../dimension';
import { identityFields } from '../identity';
import { slotSizeSchema } from '../patterns';
import { cardContradictions } from './card-contradictions';

export const cardSpecSchema = z
  .strictObject({
    kind: z.literal('card'),
    ...identityFields,
    interface: slotSizeSchema.meta({ title: 'Edge connector' }),
    length: millimetres('Length', { datum: 'card-side face of the bracket to the tip' }),
    height: millimetres('Height', { datum: 'finger tips to the top of the shroud' }),
    thickness: millimetres('Thickness', { datum: 'back of the backplate to face of the shroud' }),
    bracketSlots: z.int().min(1).max(4).meta({ title: 'Slots of the bracket' }),
    lowProfile: z.boolean().optional().meta({ title: 'Low-profile bracket' }),
    keyNotch: millimetres('Bracket to key notch', {
      datum: 'card-side face of the bracket to the key notch of the edge connector',
      min: 40,
      max: 80,
      fallback: 58.19,
    }).optional(),
    backplate: millimetres('Backplate side', {
      datum: 'solder-side surface of the circuit board to back of the backplate',
      min: 0,
      fallback: 2.67,
    }).optional(),
    boardLength: millimetres('Circuit board length', {
      datum: 'bracket face to end of the circuit board',
      fallback: 'the whole length',
    }).optional(),
    boardHeight: millimetres('Circuit board height', {
      datum: 'finger tips to upper edge of the circuit board',
      fallback: 111.15,
    }).optional(),
    fans: z
      .strictObject({ count: z.int().min(1).max(4), diameter: millimetres('Diameter') })
      .optional()
      .meta({ title: 'Fans' }),
    power: z
      .array(
        z.strictObject({
          type: z.enum(['card 6-pin', 'card 8-pin', 'card 16-pin']),
          edge: z
            .enum(['top', 'end', 'bracket end'])
            .meta({ title: 'Edge it faces', help: 'top = away from the board, end = far end of the card' }),
          at: position('Place along the edge', {
            datum: 'top edge: bracket face to middle of the socket; end: finger tips to middle of the socket',
          }),
          recess: millimetres('Set back from the shroud', { min: 0, fallback: 0 }).optional(),
        }),
      )
      .max(4)
      .optional()
      .meta({ title: 'Power sockets' }),
    sustained: rating('Sustained power', 'W', { max: 1000 }).optional(),
    peak: rating('Peak power', 'W', { max: 2000 }).optional(),
    sound: rating('Sound at top fan speed, 1 m', 'dB', { max: 100 }).optional(),
    coilSound: rating('Sound of its coils under load, 1 m', 'dB', { max: 100 }).optional(),
    resistance: rating('Heat resistance, chip to intake air at top fan speed', 'K/W', { max: 20 }).optional(),
    limit: rating('Highest temperature', '°C', { max: 150 }).optional(),
  })
  .superRefine(refuse(cardContradictions));
export type CardSpec = z.infer<typeof cardSpecSchema>;

/**
 * What can be seen where a telescope is powered, by itself or beside its better. Common practice, no
 * source; local electrical rules and a qualified person's word go before it.
 */
type PowerSight = { text: string; reason: string };

export const dangerous: readonly PowerSight[] = [
  {
    text: 'An extension lead for indoor use lies in the wet grass',
    reason: 'Mains and water can kill. Outdoors the mains is the teacher’s, by local rules.',
  },
  {
    text: 'Somebody wants to charge alkaline cells',
    reason: 'They are made for one life. Charged, they get hot, leak or burst.',
  },
  {
    text: 'Loose cells lie in a pocket with keys and coins',
    reason: 'A coin across two ends shorts a cell, and it gets hot enough to burn.',
  },
  {
    text: 'A pack has swollen and its case bulges',
    reason: 'A swollen pack may burst into fire. Nobody uses, charges or opens it.',
  },
  {
    text: 'New cells are put in beside half-used ones',
    reason: 'The used ones are driven backwards at the end, get warm and leak.',
  },
  {
    text: 'A bare wire shows where a plug’s lead is broken',
    reason: 'Touching wires short the pack: it sparks and the lead melts.',
  },
  {
    text: 'A mains adapter is tucked under a coat to keep the dew off',
    reason: 'Covered it overheats, and the coat gets wet. It belongs in the dry, in free air.',
  },
  {
    text: 'Somebody cuts a plug off to fit another one on',
    reason: 'Plus and minus are easily exchanged. That is work for a qualified person.',
  },
  {
    text: 'The lead to the pack runs across the path at ankle height',
    reason: 'Whoever trips pulls the plug out live, and the telescope over.',
  },
];

export const harmless: readonly PowerSight[] = [
  {
    text: 'A battery pack sits on the tray, its lead tied to a leg',
    reason: 'Low volts, dry, and nothing to trip over.',
  },
  {
    text: 'Eight fresh cells of one kind go into the holder',
    reason: 'One kind, all fresh, all together: so it should be.',
  },
  {
    text: 'Spare cells are carried in their own box',
    reason: 'In a box no metal can reach both their ends.',
  },
  {
    text: 'The pack could give 5 A, and the telescope takes 1.2 A',
    reason: 'The telescope takes what it needs. More amperes than needed do no harm.',
  },
  {
    text: 'The holder is unplugged while cells are changed',
    reason: 'That is how it is done.',
  },
  {
    text: 'The teacher has the socket checked by a qualified person',
    reason: 'That is whose word counts where the mains goes outdoors.',
  },
  {
    text: 'Empty cells go into the collecting box at school',
    reason: 'That is where they belong, neither in the bin nor in a fire.',
  },
  {
    text: 'Rechargeable cells are charged indoors in their own charger',
    reason: 'They are made for that, in the charger made for them, with an adult about.',
  },
];

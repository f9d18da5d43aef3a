/** Said with every question about the order. */
export const switchingRule =
  'The order: switch off, cells, hand control, supply, switch on. Nothing goes in or out while the switch is on.';

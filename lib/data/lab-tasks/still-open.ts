/** Said with every refusal of an answer: a slip costs no attempt. */
export const stillOpen = 'Nothing was counted; your attempt is still open.';

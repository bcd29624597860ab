/** What the contract asks of a password, in words for a person. */
export const passwordRule = 'At least ten characters. Four or five words in a row are easy to remember and hard to guess.';

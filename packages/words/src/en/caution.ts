/** What to take care of. */
export const caution = {
  'caution.painOn':
    'There was pain on {on, date, plain}. Stop today if it comes again, and see a doctor or a physiotherapist if it stays. Pain is pain in a joint or a sharp pain, not tired muscles.',
  'caution.lighterTool':
    '{days, plural, one {# day} other {# days}} without a bow or a band: begin with lighter limbs or a stretch band, and without added weight.',
  'caution.youngChild': 'Under 12: a stretch band only, with a coach or another adult beside you.',
  'caution.young': 'Under 16: a light bow, no added weight, and a coach who knows the plan.',
  'caution.compound':
    'A compound bow pulls hard as it is let down, and this drill lets down often. Keep both elbows high, let down slowly, and have a coach watch you first.',
  'caution.dryFire': 'Never let go of a drawn string with no arrow on it. Let down slowly, every time.',
  'caution.band': 'Check the band for cracks, anchor it well, and keep it out of line with your eyes.',
  'caution.flexible': 'An arrow is on the string: stand close to a safe backstop, with nobody near the line of flight.',
  'caution.structural': 'Learn this drill from a qualified coach before you do it alone.',
  'caution.opposite': 'The opposite hand is weaker: take a lighter bow or a band.',
  'caution.stopOnPain': 'Warm up first. Stop on pain; if it stays, see a doctor or a physiotherapist.',
  'caution.coachFirst': "A qualified coach's word, club rules and local rules come before this plan.",
} as const;

import fc from 'fast-check';

/** A property that names no seed of its own is tried with this one, so that every run can be repeated. */
fc.configureGlobal({ seed: 20_261_125 });

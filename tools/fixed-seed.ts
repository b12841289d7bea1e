import fc from "fast-check";

// Property tests draw the same values in every run, so that a failure of CI is a failure everywhere.
fc.configureGlobal({ seed: 20_261_124 });

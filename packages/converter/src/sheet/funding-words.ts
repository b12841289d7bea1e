import type { SurveySheet } from "@wherry/contracts";

/** Each grant in words. */
export const fundingWords = ({ survey }: SurveySheet): string[] =>
  (survey.funding ?? []).map(({ funder, award_number, award_title }) =>
    [funder, award_number && `award ${award_number}`, award_title].filter(Boolean).join(", "),
  );

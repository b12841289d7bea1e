import type { Instrument } from "@wherry/contracts";

/** When, where and with what result each sensor was calibrated, as far as the sheet tells; a text for each time. */
export const sensorCalibrations = ({ sensors = {} }: Instrument): string[] =>
  Object.entries(sensors).flatMap(([quantity, sensor]) =>
    (sensor?.calibrations ?? []).map(({ date, kind, laboratory, certificate, document, coefficients = {} }) =>
      [
        `${quantity.replaceAll("_", " ")} calibrated ${date}`,
        kind,
        laboratory,
        certificate && `certificate ${certificate}`,
        document,
        ...Object.entries(coefficients).map(([name, value]) => `${name} = ${value}`),
      ]
        .filter(Boolean)
        .join(", "),
    ),
  );

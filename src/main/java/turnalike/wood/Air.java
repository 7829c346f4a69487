package turnalike.wood;

import turnalike.units.Parsed;

/**
 * Still air that wood is left in until it changes no more.
 *
 * @param celsius temperature, from {@value #COLDEST} to {@value #WARMEST} °C
 * @param relativeHumidity as a fraction, from 0 to 1
 */
public record Air(double celsius, double relativeHumidity) {
    private static final double COLDEST = -20;
    private static final double WARMEST = 100;

    public Air {
        if (!(celsius >= COLDEST && celsius <= WARMEST)) {
            throw new IllegalArgumentException(
                    "air must be from %s to %s degrees Celsius, was %s".formatted(COLDEST, WARMEST, celsius));
        }
        if (!(relativeHumidity >= 0 && relativeHumidity <= 1)) {
            throw new IllegalArgumentException("humidity must be from 0 to 1, was %s".formatted(relativeHumidity));
        }
    }

    /**
     * {@return the air of that temperature and humidity; {@link IllegalArgumentException} outside the ranges above}
     *
     * @param celsius temperature, from -20 to 100 °C
     * @param humidityPct relative humidity, from 0 to 100 %
     */
    public static Air ofCelsius(double celsius, double humidityPct) {
        return new Air(celsius, humidityPct / 100);
    }

    /**
     * Fahrenheit to Celsius is exact by definition: (F - 32) / 1.8.
     *
     * @param fahrenheit temperature, from -4 to 212 °F
     * @param humidityPct relative humidity, from 0 to 100 %
     * @return the air of that temperature and humidity; {@link IllegalArgumentException} outside the ranges above
     */
    public static Air ofFahrenheit(double fahrenheit, double humidityPct) {
        return ofCelsius((fahrenheit - 32) / 1.8, humidityPct);
    }

    /**
     * {@return the air a person gave, or why it cannot be any}
     *
     * @param celsius temperature; refused outside -20 to 100 °C
     * @param humidityPct relative humidity; refused outside 0 to 100 %
     */
    public static Parsed<Air> read(double celsius, double humidityPct) {
        if (!(celsius >= COLDEST && celsius <= WARMEST)) {
            return Parsed.refused(
                    "air from -20 to 100 degrees Celsius is meant, was %s".formatted(celsius),
                    "check whether the temperature is in Celsius or Fahrenheit");
        }
        if (!(humidityPct >= 0 && humidityPct <= 100)) {
            return Parsed.refused(
                    "relative humidity must be from 0 to 100 percent, was %s".formatted(humidityPct),
                    "give it in percent, as a hygrometer shows it");
        }
        return Parsed.of(ofCelsius(celsius, humidityPct));
    }
}

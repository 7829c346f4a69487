package turnalike.job.keys;

import java.util.Arrays;
import java.util.List;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Word;
import turnalike.turning.Held;
import turnalike.turning.Lathe;

/** What the job says of the lathe and the hand that turns. */
public final class TurningKeys {
    /** The lathe's steps in rpm; left out, any speed can be set. */
    public static final Key<ListOf<Number>> SPEEDS = Key.may(
                    "speeds",
                    new ListOf<>(KeyType.number(RuleKeys.SLOWEST_RPM, RuleKeys.FASTEST_RPM), 1, 100),
                    "the steps of your lathe, in rpm; those within the range are named",
                    "any speed")
            .asked(KeySection.TURNING, "Your lathe's speeds, rpm", "parted by semicolons: 500; 900; 1500");

    /** The fastest the lathe is to run, in rpm. */
    public static final Key<Number> MAX_RPM = Key.may(
                    "max_rpm",
                    KeyType.number(RuleKeys.SLOWEST_RPM, RuleKeys.FASTEST_RPM),
                    "no faster than this; a step above it is an error",
                    "the fastest step")
            .asked(KeySection.TURNING, "Lathe's fastest, rpm", "left empty: any");

    /** How hard the tool pushes the piece aside, in newtons; none is pushed harder than two hundred kilograms' weight. */
    public static final Key<Number> FORCE = Key.may(
                    "force_n",
                    KeyType.number(0.001, 2000, Lathe.USUAL_CUTTING.newtons()),
                    "how hard the tool pushes the piece aside, for its sag",
                    "20 N, a light finishing cut (common practice, no source)")
            .asked(KeySection.TURNING, "Tool pushes with, N", "left empty: 20, a light cut");

    /** How hard the tailstock is wound up, in newtons, held against what bows the piece out; left out, that is not looked at. */
    public static final Key<Number> TAILSTOCK_FORCE = Key.may(
                    "tailstock_force_n",
                    KeyType.number(0.001, 20_000),
                    "how hard the tailstock is wound up, held against what bows the piece out",
                    "not looked at")
            .asked(KeySection.TURNING, "Tailstock presses with, N", "");

    /** How the piece is held, {@link Held.By}. */
    public static final Key<Word> HELD = Key.may(
                    "held",
                    new Word(Arrays.stream(Held.By.values()).map(Held.By::word).toList()),
                    "how the piece is held; by one end it is turned from the other end back",
                    "centres")
            .asked(KeySection.TURNING, "Held", "left empty: centres");

    /** Which end is at the headstock, {@link Held.At}. */
    public static final Key<Word> HELD_AT = Key.may(
                    "held_at",
                    new Word(Arrays.stream(Held.At.values()).map(Held.At::word).toList()),
                    "which of its ends stands at the headstock",
                    "start")
            .asked(KeySection.TURNING, "Held at its", "left empty: start");

    /** Whether the tailstock is up; between centres it always is. */
    public static final Key<Word> TAILSTOCK = Key.may(
                    "tailstock",
                    new Word(List.of("up", "away")),
                    "whether the tailstock bears the other end until the last cuts",
                    "up")
            .asked(KeySection.TURNING, "Tailstock", "left empty: up");

    /** All of them, in the order they are told. */
    static final Group GROUP =
            new Group(List.of(SPEEDS, MAX_RPM, FORCE, TAILSTOCK_FORCE, HELD, HELD_AT, TAILSTOCK, RuleKeys.RULES));

    private TurningKeys() {}
}

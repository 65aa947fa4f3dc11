package pegbook.jobfile;

import java.util.List;
import pegbook.job.Call;

/** Whom to call, and how. */
final class CallKeys {
  /** A day sheet is one side of paper. */
  private static final int MOST = 8;

  static final Key<Call.Who> WHO =
      Key.required("who", ChoiceValue.of(Call.Who.class), "\"inspector\"");
  static final Key<String> NAME = Key.free("name", new TextValue(40));
  static final Key<String> NUMBER = Key.required("number", new TextValue(30), "\"555-0142\"");
  static final Key<List<Call>> CALLS =
      Key.free(
          "calls",
          new ListValue<>(
              new SectionValue<>(
                  List.of(WHO, NAME, NUMBER),
                  fields -> new Call(fields.get(WHO), fields.find(NAME), fields.get(NUMBER))),
              1,
              MOST));

  private CallKeys() {}
}

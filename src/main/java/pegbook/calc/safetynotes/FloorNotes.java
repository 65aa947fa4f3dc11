package pegbook.calc.safetynotes;

import java.util.List;
import pegbook.calc.safetynotes.Note.Stage;
import pegbook.figures.Task.Kind;
import pegbook.job.Floor;
import pegbook.job.Job;

/** The floor, where its frame is part of the packet: posts that fall, saws, open joists. */
record FloorNotes(Job job) {
  List<Note> notes() {
    if (job.floor().flatMap(Floor::frame).isEmpty()) {
      return List.of();
    }
    return List.of(
        Note.of("frame-brace", Stage.FLOOR, 8).during(Kind.FRAME),
        Note.of("frame-walk", Stage.FLOOR, 9).during(Kind.FRAME, Kind.BOARDS),
        Note.of("frame-saw", Stage.FLOOR, 10).during(Kind.FRAME, Kind.BOARDS),
        Note.of("frame-dust", Stage.FLOOR, 26).during(Kind.FRAME, Kind.BOARDS));
  }
}

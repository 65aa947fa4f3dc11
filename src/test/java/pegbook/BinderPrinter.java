package pegbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.packet.Packet;
import pegbook.packet.Packets;

/** Prints the binder of a job and nothing else of its packet. May be shared by threads. */
public final class BinderPrinter {
  private final Pegbook pegbook = Pegbook.of(Optional.empty());

  /**
   * From a job file to the PDF of its binder.
   *
   * @throws IllegalArgumentException when the job is refused, with the reasons
   * @throws IOException when the file cannot be read
   */
  public byte[] print(Path job) throws IOException {
    Packet packet = packet(job);
    return pegbook.print(pegbook.booklets(packet).get(0), packet).bytes();
  }

  /** A thread with as much room for deep layouts as the program's own have. */
  public static Thread thread(Runnable work) {
    return new Thread(null, work, "binder", Workers.STACK_BYTES);
  }

  static Packet packet(Path job) throws IOException {
    JobFile file = JobFileReader.read(job.toString(), Files.readAllBytes(job));
    if (file instanceof JobFile.Read read) {
      return Packets.calculate(read.job(), read.sha256());
    }
    throw new IllegalArgumentException(file.toString());
  }
}

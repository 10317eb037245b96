package strikeoff.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import strikeoff.cli.commands.Strikeoff;
import strikeoff.cli.files.StandardInput;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Outlet;
import strikeoff.cli.text.Surroundings;

/** Starts the program; the only place that ends it. */
public final class Main {

  private static final String TOO_LITTLE_MEMORY =
      "strikeoff: there is too little memory for this; the JDK's option -Xmx gives more, as"
          + " -Xmx512m\n";

  private Main() {}

  /** Runs one command and exits with its code. */
  public static void main(String[] args) {
    // What fails beside the work is told where its result is asked for.
    Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> {});
    // Made while there is memory for it.
    FileOutputStream err = new FileOutputStream(FileDescriptor.err);
    byte[] tooLittle = TOO_LITTLE_MEMORY.getBytes(StandardCharsets.UTF_8);
    int code = Exit.FAULT.code();
    try {
      code = run(args);
      System.exit(code);
    } catch (OutOfMemoryError | NoClassDefFoundError e) {
      tell(err, tooLittle);
    } catch (RuntimeException | Error e) {
      tell(err, ("strikeoff: the tool failed: " + e + "\n").getBytes(StandardCharsets.UTF_8));
    } finally {
      // Saying it, and even ending, takes memory. What gets past here would end the program with 1,
      // as if a plan had a stop.
      Runtime.getRuntime().halt(code);
    }
  }

  private static void tell(FileOutputStream err, byte[] sentence) {
    try {
      err.write(sentence);
    } catch (IOException e) {
      // The code says it all the same.
    }
  }

  private static int run(String[] args) {
    Outlet out = new Outlet(new FileOutputStream(FileDescriptor.out));
    boolean terminal = isTerminal(System.console());
    Surroundings here =
        new Surroundings(
            writer(out),
            writer(new FileOutputStream(FileDescriptor.err)),
            new StandardInput(),
            System.getenv(),
            terminal,
            // The JDK can't tell it of the error output; the launcher can.
            Boolean.parseBoolean(System.getProperty("strikeoff.watched", "" + terminal)),
            folder(),
            Runtime.getRuntime().availableProcessors());
    int code = Strikeoff.run(here, Arguments.asWritten(args));
    here.out().flush();
    // A verdict that reached nobody must not pass for one that did.
    if (out.lost().isPresent()) {
      Complaint.say(here, "the results can't be written: " + out.lost().get());
      code = Math.max(code, Exit.FAULT.code());
    }
    here.err().flush();
    return code;
  }

  /** Where the program runs; a name that the locale can't read would lead nowhere. */
  private static Path folder() {
    try {
      return FileNames.isLost(System.getProperty("user.dir", ""))
          ? Path.of("/proc/self/cwd").toRealPath()
          : Path.of("");
    } catch (IOException e) {
      return Path.of("");
    }
  }

  /** UTF-8 whatever the platform's charset: before Java 18 that depends on the locale. */
  private static PrintWriter writer(OutputStream to) {
    return new PrintWriter(new OutputStreamWriter(to, StandardCharsets.UTF_8));
  }

  /** From Java 22 on there is a console even for pipes, and it has to be asked. */
  private static boolean isTerminal(Console console) {
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }
}

package strikeoff.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Starts the program; the only place that ends it. */
public final class Main {

  private Main() {}

  /** Runs one command and exits with its code. */
  public static void main(String[] args) {
    Outlet out = new Outlet(new FileOutputStream(FileDescriptor.out));
    Surroundings here =
        new Surroundings(
            writer(out),
            writer(new FileOutputStream(FileDescriptor.err)),
            new FileInputStream(FileDescriptor.in),
            System.getenv(),
            isTerminal(System.console()),
            Path.of(""),
            Runtime.getRuntime().availableProcessors());
    EarlyEnd end = EarlyEnd.watch(here, Runtime.getRuntime()::halt);
    int code = Strikeoff.run(here, args);
    here.out().flush();
    // A verdict that reached nobody must not pass for one that did.
    if (out.lost().isPresent()) {
      Complaint.say(here, "the results can't be written: " + out.lost().get());
      code = Math.max(code, Exit.FAULT.code());
    }
    here.err().flush();
    end.done();
    System.exit(code);
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

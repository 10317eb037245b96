package strikeoff.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

/** The floor of a batch: Jackson alone reads the same files into trees, with as many threads. */
public final class BareReading {

  private BareReading() {}

  /**
   * @param args the folder of plans
   */
  public static void main(String[] args) throws Exception {
    List<Path> files;
    try (Stream<Path> walk = Files.walk(Path.of(args[0]))) {
      files = walk.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
    ObjectMapper yaml = new YAMLMapper();
    ExecutorService threads =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    long keys = 0;
    try {
      for (Future<JsonNode> tree : started(files, yaml, threads)) {
        keys += tree.get().size();
      }
    } finally {
      threads.shutdown();
    }
    System.out.println(files.size() + " files, " + keys + " keys");
  }

  private static List<Future<JsonNode>> started(
      List<Path> files, ObjectMapper yaml, ExecutorService threads)
      throws IOException, InterruptedException, ExecutionException {
    List<Future<JsonNode>> trees = new ArrayList<>();
    for (Path file : files) {
      trees.add(threads.submit(() -> yaml.readTree(file.toFile())));
    }
    return trees;
  }
}

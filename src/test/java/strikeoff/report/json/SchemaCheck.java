package strikeoff.report.json;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** A JSON Schema in the hands of a validator that isn't ours. */
public final class SchemaCheck {

  private final Schema schema;

  private SchemaCheck(Schema schema) {
    this.schema = schema;
  }

  /** A schema that names its own dialect. */
  public static SchemaCheck of(String schema) {
    SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    return new SchemaCheck(registry.getSchema(schema, InputFormat.JSON));
  }

  /** What is wrong with a JSON document, a line each; empty if it is valid. */
  public List<String> json(String document) {
    return told(schema.validate(document, InputFormat.JSON));
  }

  private static List<String> told(List<Error> errors) {
    return errors.stream().map(e -> e.getInstanceLocation() + ": " + e.getMessage()).toList();
  }
}

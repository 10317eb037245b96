package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AssetsTest {

  /**
   * A page whose policy has another hash goes without its style or script: write down the one that
   * this test tells. How a hash is written: W3C, Content Security Policy Level 3, hash-source (from
   * memory).
   */
  @ParameterizedTest
  @EnumSource
  void thePolicyHasTheHashOfTheFile(Assets asset) throws NoSuchAlgorithmException {
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(asset.utf8());
    assertThat(asset.hash()).isEqualTo("sha256-" + Base64.getEncoder().encodeToString(digest));
  }
}

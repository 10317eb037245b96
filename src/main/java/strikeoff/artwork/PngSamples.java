package strikeoff.artwork;

import java.util.Arrays;
import java.util.Optional;
import strikeoff.plan.Artwork.Tone;

/**
 * Turns a PNG row's samples into paste (ISO/IEC 15948, clause 11.2.2 and 11.3.2): how dark or light
 * a point is, times how much of it there is. Gamma is left aside, since a film is black or clear.
 *
 * @param colours the kind of samples: 0 grey, 2 RGB, 3 palette, 4 grey with alpha, 6 RGB with alpha
 * @param depth bits a sample
 * @param palette three bytes a colour, if there is one
 * @param clear what is transparent: of a palette the alpha of its colours, else the one tone that
 *     is, in two bytes a channel; empty if nothing is
 */
record PngSamples(int colours, int depth, Optional<byte[]> palette, Optional<byte[]> clear) {

  static final int GREY = 0;
  static final int RGB = 2;
  static final int PALETTE = 3;
  static final int GREY_ALPHA = 4;
  static final int RGB_ALPHA = 6;

  /** What a palette holds no colour for. */
  private static final int NONE = -1;

  int channels() {
    return switch (colours) {
      case RGB -> 3;
      case GREY_ALPHA -> 2;
      case RGB_ALPHA -> 4;
      default -> 1;
    };
  }

  /** Bytes that one point takes, at least one: by so many the filters look back. */
  int pointBytes() {
    return Math.max(1, channels() * depth / 8);
  }

  /** Bytes of a row of so many points. */
  int rowBytes(int points) {
    return (int) (((long) points * channels() * depth + 7) / 8);
  }

  /**
   * For pictures of two tones without anything between.
   *
   * @return the bit that takes paste; empty if it isn't that simple
   */
  Optional<Integer> plainBit(Tone prints) {
    if (depth != 1) {
      return Optional.empty();
    }
    int[] inks = table(prints);
    return inks[0] == 255 && inks[1] == 0
        ? Optional.of(0)
        : inks[0] == 0 && inks[1] == 255 ? Optional.of(1) : Optional.empty();
  }

  /**
   * The paste of each possible sample of at most eight bits; {@link #NONE} for a colour that the
   * palette lacks.
   */
  int[] table(Tone prints) {
    int[] inks = new int[1 << depth];
    for (int sample = 0; sample < inks.length; sample++) {
      if (colours == PALETTE) {
        byte[] list = palette.orElseThrow();
        int at = sample * 3;
        int alpha = alphaOf(sample);
        inks[sample] =
            at + 2 < list.length
                ? ink(
                    luma(list[at] & 0xff, list[at + 1] & 0xff, list[at + 2] & 0xff), alpha, prints)
                : NONE;
      } else {
        int alpha = isClear(sample) ? 0 : 255;
        inks[sample] = ink(sample * 255 / (inks.length - 1), alpha, prints);
      }
    }
    return inks;
  }

  private int alphaOf(int colour) {
    return clear.filter(a -> colour < a.length).map(a -> a[colour] & 0xff).orElse(255);
  }

  private boolean isClear(int sample) {
    return clear.isPresent() && sample == two(clear.get(), 0);
  }

  /**
   * Turns a row into paste.
   *
   * @param row samples as they are stored, from {@code from} on
   * @param inks the table of this tone; used for samples of at most eight bits in one channel
   * @param into takes the result, 0 to 255
   * @throws UnreadablePicture if a sample is a colour that the palette lacks
   */
  void inks(byte[] row, int from, int count, int[] inks, Tone prints, byte[] into)
      throws UnreadablePicture {
    if (depth < Byte.SIZE) {
      int mask = inks.length - 1;
      int inByte = Byte.SIZE / depth;
      for (int i = 0; i < count; ) {
        int bit = i * depth;
        int at = from + (bit >> 3);
        if (i >= inByte && (bit & 7) == 0 && row[at] == row[at - 1] && i + inByte <= count) {
          System.arraycopy(into, i - inByte, into, i, inByte);
          i += inByte;
        } else {
          into[i++] = known(inks, row[at] >> (8 - depth - (bit & 7)) & mask);
        }
      }
      return;
    }
    int step = pointBytes();
    int end = from + count * step;
    for (int i = 0; i < count; ) {
      int at = from + i * step;
      byte ink = step == 1 ? known(inks, row[at] & 0xff) : (byte) ink(row, at, step, prints);
      int next = i + 1;
      // Of a film, most points are as the one before.
      if (next < count && row[at + step] == row[at]) {
        int differs = Arrays.mismatch(row, at + step, end, row, at, end - step);
        next = differs < 0 ? count : next + differs / step;
        Arrays.fill(into, i, next, ink);
      } else {
        into[i] = ink;
      }
      i = next;
    }
  }

  private byte known(int[] inks, int sample) throws UnreadablePicture {
    if (inks[sample] == NONE) {
      throw new UnreadablePicture(
          "the picture is damaged: it uses colour "
              + sample
              + " of its palette, which holds "
              + palette.orElseThrow().length / 3
              + "; save it again");
    }
    return (byte) inks[sample];
  }

  private int ink(byte[] row, int at, int step, Tone prints) {
    int width = depth / 8;
    int first = row[at] & 0xff;
    boolean rgb = colours == RGB || colours == RGB_ALPHA;
    int tone = rgb ? luma(first, row[at + width] & 0xff, row[at + 2 * width] & 0xff) : first;
    boolean own = colours == GREY_ALPHA || colours == RGB_ALPHA;
    int alpha = own ? row[at + step - width] & 0xff : isClear(row, at, width) ? 0 : 255;
    return ink(tone, alpha, prints);
  }

  /** True if each channel is that of the one tone that is transparent. */
  private boolean isClear(byte[] row, int at, int width) {
    if (clear.isEmpty()) {
      return false;
    }
    for (int channel = 0; channel < channels(); channel++) {
      int from = at + channel * width;
      int sample = width == 2 ? two(row, from) : row[from] & 0xff;
      if (sample != two(clear.get(), channel * 2)) {
        return false;
      }
    }
    return true;
  }

  static int two(byte[] bytes, int at) {
    return (bytes[at] & 0xff) << 8 | bytes[at + 1] & 0xff;
  }

  /** How light a colour is, by the weights of ITU-R BT.601. */
  static int luma(int red, int green, int blue) {
    return (299 * red + 587 * green + 114 * blue + 500) / 1000;
  }

  /** How much of full paste a tone takes, 0 to 255. */
  static int ink(int light, int alpha, Tone prints) {
    int full = prints == Tone.DARK ? 255 - light : light;
    return (full * alpha + 127) / 255;
  }
}

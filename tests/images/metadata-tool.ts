import { readFile, writeFile } from "node:fs/promises";
import { MemoryFileSystem, ZeroPerl } from "@6over3/zeroperl-ts";
import { afterAll } from "vitest";

export interface MetadataTool {
  /** Writes tags into a file, by their ExifTool names; a value in bytes is written as it is. */
  write(file: string, tags: Readonly<Record<string, string | number | Uint8Array>>): Promise<void>;
  /** Every tag that is found, unknown and doubled ones included, by "group:name", with its stored value. */
  read(file: string): Promise<Readonly<Record<string, string>>>;
}

/**
 * Drives ExifTool through its own module. `PrintConv => 0` is the command's -n, `Unknown` its -u, `Duplicates` its
 * -a and group 1 its -G1; `Protected => 1` writes what is asked for by name, as the command does.
 */
const program = String.raw`
use strict; use warnings;
use Image::ExifTool;

sub bytes_of { my ($file) = @_; open(my $in, '<:raw', $file) or die "$file: $!"; local $/; return scalar <$in>; }

sub json { my ($text) = @_;
  $text =~ s/(["\\])/\\$1/g;
  $text =~ s/([\x00-\x1f\x7f-\xff])/sprintf('\\u%04x', ord $1)/ge;
  return qq("$text");
}

sub write_tags { my ($from, $to, @tags) = @_;
  my $tool = Image::ExifTool->new; $tool->Options(PrintConv => 0);
  while (my ($kind, $tag, $value) = splice(@tags, 0, 3)) {
    my ($set, $problem) = $tool->SetNewValue($tag, $kind eq 'file' ? bytes_of($value) : $value, Protected => 1);
    die "$tag: $problem" if $problem;
    die "$tag: not set" unless $set;
  }
  die $tool->GetValue('Error') || 'not written' unless $tool->WriteInfo($from, $to) == 1;
  return 'written';
}

sub read_tags { my ($file) = @_;
  my $tool = Image::ExifTool->new; $tool->Options(PrintConv => 0, Unknown => 1, Duplicates => 1);
  my $found = $tool->ImageInfo($file);
  my @lines = map {
    my $value = $$found{$_};
    $value = ref $value eq 'ARRAY' ? join(', ', @$value) : ref $value ? '(bytes)' : $value;
    json($tool->GetGroup($_, 1) . ':' . Image::ExifTool::GetTagName($_)) . ':' . json($value);
  } $tool->GetFoundTags('File');
  return '{' . join(',', @lines) . '}';
}
1;
`;

/**
 * ExifTool, the reference reader and writer of metadata, on a Perl that came with the packages: nothing of it is
 * shared with what is tested. One interpreter for all tests of a file, since it takes seconds to load.
 */
export function metadataTool(): MetadataTool {
  const files = new MemoryFileSystem({ "/": "" });
  let starting: Promise<ZeroPerl> | undefined;
  const start = async () => {
    const perl = await ZeroPerl.create({ fileSystem: files, env: { LC_ALL: "C" } });
    await perl.eval(program);
    if (perl.getLastError() !== "") throw new Error(perl.getLastError());
    return perl;
  };
  afterAll(async () => (await starting)?.dispose());

  const call = async (name: string, ...given: readonly string[]): Promise<string> => {
    starting ??= start();
    const perl = await starting;
    const values = given.map((text) => perl.createString(text));
    const answer = await perl.call(name, values, "scalar");
    for (const value of values) value.dispose();
    if (answer === null || Array.isArray(answer)) throw new Error(`ExifTool: ${perl.getLastError()}`);
    const text = answer.toString();
    answer.dispose();
    return text;
  };
  /** Under a name that says only what kind of file it is: the content is what counts. */
  const put = async (name: string, bytes: Uint8Array) => {
    files.addFile(name, bytes);
    return name;
  };
  const nameIn = (file: string) => `/picture${/\.\w+$/.exec(file)?.[0] ?? ""}`;

  return {
    async write(file, tags) {
      const from = await put(nameIn(file), await readFile(file));
      const to = `/written${from.slice("/picture".length)}`;
      const given = await Promise.all(
        Object.entries(tags).map(async ([tag, value], at) =>
          value instanceof Uint8Array
            ? ["file", tag, await put(`/value-${at}`, value)]
            : ["text", tag, String(value)],
        ),
      );
      files.removeFile(to);
      await call("write_tags", from, to, ...given.flat());
      const written = files.lookup(to);
      if (written?.type !== "file") throw new Error(`ExifTool wrote no "${to}".`);
      const { content } = written;
      await writeFile(file, content instanceof Blob ? Buffer.from(await content.arrayBuffer()) : content);
    },
    async read(file) {
      const name = await put(nameIn(file), await readFile(file));
      return JSON.parse(await call("read_tags", name)) as Record<string, string>;
    },
  };
}

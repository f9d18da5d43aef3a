import { Button } from '@/components/ui/button';

type JudgeButtonsProps = { onJudge: (trust: boolean) => void; className?: string };

/** Whether one would observe with it. Neither is the obvious answer, so neither is the lamp. */
export function JudgeButtons({ onJudge, className }: JudgeButtonsProps) {
  return (
    <>
      <Button
        className={className}
        onClick={() => {
          onJudge(true);
        }}
      >
        I trust it
      </Button>
      <Button
        className={className}
        onClick={() => {
          onJudge(false);
        }}
      >
        I do not trust it
      </Button>
    </>
  );
}
